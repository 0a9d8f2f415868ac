package policy.membrane.vapor_class_test

import data.policy.lib
import data.policy.membrane.vapor_class as rule
import rego.v2

# RMS-LB 2018 (12/20) 7.6.1, which the publisher calls identical for houses: ASTM
# E1745 class A, B or C.
profile := {"membrane": {"vapor_class": {"classes": {"any_of": ["a", "b", "c"]}}}}

sheet(fields) := {"systems": [{"id": "s", "kind": "sub-membrane", "membrane": fields}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(sheet({"e1745_class": "c"})) == "met"

# Worked case 27, RMS-LB 2018 (12/20) 7.6.1: 6 mil sheet that shows no class is
# undetermined.
test_undetermined_without_a_class if {
	verdict(sheet({"material": "polyethylene", "thickness": {"si": 0.0001524}, "e1745_class": "none"})) == "undetermined"
}

test_deficient_in_a_lower_class if {
	strict := {"membrane": {"vapor_class": {"classes": {"any_of": ["a"]}}}}
	"deficient" == lib.verdict(rule, "s") with input as sheet({"e1745_class": "c"}) with data.profile as strict
}

test_unrecorded if verdict(sheet({"thickness": {"si": 0.0001524}})) == "unrecorded"

test_not_applicable_without_a_membrane if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "membrane", "e1745_class"]],
	}
}
