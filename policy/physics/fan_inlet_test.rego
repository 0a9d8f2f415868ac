package policy.physics.fan_inlet_test

import data.policy.lib
import data.policy.physics.fan_inlet as rule
import rego.v2

# common practice
profile := {"physics": {"fan_inlet": {"classes": {"any_of": ["high-flow"]}}}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

record(fan, bore) := {
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "fan": fan}],
	"derived": {"systems": [{"id": "s", "at": "/systems/0", "smallest_main_bore": bore}]},
}

test_met_when_equal if verdict(record({"class": "high-flow", "inlet_size": {"si": 0.1016}}, {"si": 0.1016})) == "met"

test_deficient if verdict(record({"class": "high-flow", "inlet_size": {"si": 0.1016}}, {"si": 0.0762})) == "deficient"

test_not_applicable_to_usual_fans if verdict(record({"class": "general", "inlet_size": {"si": 0.1016}}, {"si": 0.0762})) == "not-applicable"

test_unrecorded if verdict(record({"inlet_size": {"si": 0.1016}}, {"si": 0.1016})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "derived": {"systems": [{"id": "s", "at": "/systems/0"}]}} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "fan", "class"]],
		["s", ["systems", 0, "fan", "inlet_size"]],
		["s", ["derived", "systems", 0, "smallest_main_bore"]],
	}
}
