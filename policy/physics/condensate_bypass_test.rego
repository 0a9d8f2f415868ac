package policy.physics.condensate_bypass_test

import data.policy.lib
import data.policy.physics.condensate_bypass as rule
import rego.v2

# common practice: more than 2 kg a day (2.3148e-5 kg/s) in a freezing climate.
profile := {"physics": {"condensate_bypass": {"most": {"si": 0.0000231481481481}}}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

record(bypass, water) := {
	"house": {"altitude": {"si": 300}, "freezing_climate": true},
	"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "fan", "fan": {"condensate_bypass": bypass},
		"commissioning": {"measured_flow": {"si": 0.03}},
	}],
	"derived": {"systems": [{"id": "s", "at": "/systems/0", "condensate": water}]},
}

test_met_with_a_bypass if verdict(record(true, {"si": 0.0001})) == "met"

test_met_at_the_limit_without if verdict(record(false, {"si": 0.0000231481481481})) == "met"

# 60 cfm of soil gas from 5 to -5 degrees, up to 9 kg a day.
test_deficient if verdict(record(false, {"si": 0.000104745})) == "deficient"

test_undetermined_without_the_altitude if {
	job := object.union(object.remove(record(false, {"si": 0.00001}), ["house"]), {"house": {"freezing_climate": true}})
	verdict(job) == "undetermined"
}

test_not_applicable_in_a_warm_climate if {
	verdict(object.union(record(false, {"si": 0.0001}), {"house": {"freezing_climate": false}})) == "not-applicable"
}

test_unrecorded if verdict(record(false, {})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "derived": {"systems": [{"id": "s", "at": "/systems/0"}]}} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["house", "freezing_climate"]],
		["s", ["systems", 0, "fan", "condensate_bypass"]],
		["s", ["derived", "systems", 0, "condensate"]],
	}
}
