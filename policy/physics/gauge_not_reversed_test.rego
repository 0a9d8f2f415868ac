package policy.physics.gauge_not_reversed_test

import data.policy.lib
import data.policy.physics.gauge_not_reversed as rule
import rego.v2

# common practice: a suction below zero means a reversed tube or a tap on the
# pressure side.
profile := {"physics": {"gauge_not_reversed": {"least": {"si": 0}, "wrong_taps": {"any_of": ["discharge-side"]}}}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

record(tap, reading) := {
	"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "fan",
		"gauge": {"kind": "u-tube", "tap": tap, "readings": [{"id": "r", "fan_on": true}]},
	}],
	"derived": {"systems": [{"id": "s", "at": "/systems/0", "gauge_reading": {"si": reading}}]},
}

test_met if verdict(record("riser", 200)) == "met"

test_zero_is_not_reversed if verdict(record("riser", 0)) == "met"

test_deficient_below_zero if verdict(record("riser", -1)) == "deficient"

test_deficient_behind_the_fan if verdict(record("discharge-side", 200)) == "deficient"

test_undetermined_without_the_tap if verdict(object.union(record("riser", 200), {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"gauge": {"kind": "u-tube", "readings": [{"id": "r", "fan_on": true}]},
}]})) == "undetermined"

test_unrecorded if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": {"kind": "u-tube"}}]}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	["s", ["systems", 0, "gauge", "kind"]] in got
}

test_not_applicable_without_a_gauge if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": {"kind": "none"}}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}
