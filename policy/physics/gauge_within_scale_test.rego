package policy.physics.gauge_within_scale_test

import data.policy.lib
import data.policy.physics.gauge_within_scale as rule
import rego.v2

# common practice: at the end of the scale a reading is a lower bound, beyond it
# there is none.
verdict(job) := v if v := lib.verdict(rule, "s") with input as job

record(reading, range) := {
	"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "fan",
		"gauge": {"kind": "u-tube", "range": range, "readings": [{"id": "r", "fan_on": true}]},
	}],
	"derived": {"systems": [{"id": "s", "at": "/systems/0", "gauge_reading": {"si": reading}}]},
}

test_met if verdict(record(200, {"si": 1000})) == "met"

test_undetermined_at_the_end if verdict(record(1000, {"si": 1000})) == "undetermined"

test_deficient_beyond if verdict(record(1001, {"si": 1000})) == "deficient"

test_undetermined_without_a_scale if verdict(record(200, {})) == "undetermined"

test_unrecorded if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": {"kind": "u-tube"}}]}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	["s", ["systems", 0, "gauge", "kind"]] in got
}

test_not_applicable_without_a_gauge if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": {"kind": "none"}}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}
