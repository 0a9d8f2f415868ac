package policy.physics.reading_after_start_test

import data.policy.lib
import data.policy.physics.reading_after_start as rule
import rego.v2

# common practice
verdict(job) := v if v := lib.verdict(rule, "r") with input as job

record(reading, started) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan", "fan": {"started": started},
	"gauge": {"kind": "u-tube", "readings": [object.union({"id": "r", "fan_on": true}, reading)]},
}]}

test_met_at_the_start if verdict(record({"at": {"si": 3600}}, {"si": 3600})) == "met"

test_deficient if verdict(record({"at": {"si": 3599}}, {"si": 3600})) == "deficient"

test_not_applicable_with_the_fan_off if verdict(record({"fan_on": false, "at": {"si": 0}}, {"si": 3600})) == "not-applicable"

test_undetermined_without_a_time if verdict(record({}, {"si": 3600})) == "undetermined"

test_undetermined_without_a_start if verdict(record({"at": {"si": 3600}}, {})) == "undetermined"

test_unrecorded if verdict({"systems": [{"id": "s", "gauge": {"readings": [{"id": "r"}]}}]}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "gauge": {"readings": [{"id": "r"}]}}]}
	got == {["r", ["systems", 0, "gauge", "kind"]], ["r", ["systems", 0, "gauge", "readings", 0, "fan_on"]]}
}

test_not_applicable_without_a_gauge if {
	job := {"systems": [
		{"id": "s", "gauge": {"kind": "none", "readings": [{"id": "r"}]}},
		{"id": "t", "gauge": {"kind": "none"}},
	]}
	verdict(job) == "not-applicable"
	"not-applicable" == lib.verdict(rule, "t") with input as job
}

test_unrecorded_without_readings if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s"}]}
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}
