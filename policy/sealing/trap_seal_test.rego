package policy.sealing.trap_seal_test

import data.policy.lib
import data.policy.sealing.trap_seal as rule
import rego.v2

# SGM-SF 2017 (12/20) 7.8.2: a trap seal of 6 in (15 cm) or more. EPA RMS 1994
# 14.7.2 (from memory): 6 in for condensate drains.
profile := {"sealing": {"trap_seal": {
	"kinds": {"any_of": ["condensate-drain", "utility-drain"]},
	"minimum": {"si": 0.1524},
}}}

trap(depth) := {"entry_routes": [{
	"id": "r", "kind": "condensate-drain",
	"treatment": "trapped", "trap_seal": depth,
}]}

verdict(job) := v if v := lib.verdict(rule, "r") with input as job with data.profile as profile

test_met_at_exactly_six_inches if verdict(trap({"si": 0.1524})) == "met"

# The 15 cm printed beside it are 5.91 in.
test_deficient_at_fifteen_centimetres if verdict(trap({"si": 0.15})) == "deficient"

test_unrecorded if verdict(trap({})) == "unrecorded"

test_unrecorded_treatment if verdict({"entry_routes": [{"id": "r", "kind": "utility-drain"}]}) == "unrecorded"

test_not_applicable_to_a_valve if {
	verdict({"entry_routes": [{"id": "r", "kind": "utility-drain", "treatment": "one-way-valve"}]}) == "not-applicable"
}

test_unrecorded_kind if verdict({"entry_routes": [{"id": "r"}]}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {"entry_routes": [{"id": "r", "kind": "utility-drain"}]}
	got == {
		["r", ["entry_routes", 0, "treatment"]],
		["r", ["entry_routes", 0, "trap_seal"]],
	}
}
