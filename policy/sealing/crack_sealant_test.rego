package policy.sealing.crack_sealant_test

import data.policy.lib
import data.policy.sealing.crack_sealant as rule
import rego.v2

# RMS-LB 2018 (12/20) 7.2.1: ASTM C920 class 25 or better.
profile := {"sealing": {"crack_sealant": {"classes": {"any_of": ["c920-class-25", "c920-class-50"]}}}}

crack(fields) := {"entry_routes": [object.union({"id": "r", "kind": "crack", "treatment": "sealed"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "r") with input as job with data.profile as profile

test_met_with_class_25 if verdict(crack({"sealant_standard": "c920-class-25"})) == "met"

test_met_with_a_better_class if verdict(crack({"sealant_standard": "c920-class-50"})) == "met"

test_deficient if verdict(crack({"sealant_standard": "other"})) == "deficient"

test_unrecorded if verdict(crack({"material": "urethane-caulk"})) == "unrecorded"

test_unrecorded_treatment if {
	verdict({"entry_routes": [{"id": "r", "kind": "crack", "sealant_standard": "c920-class-25"}]}) == "unrecorded"
}

test_not_applicable_out_of_reach if verdict(crack({"treatment": "not-reachable"})) == "not-applicable"

test_says_what_is_missing if {
	got := rule.missing with input as {"entry_routes": [{"id": "r", "kind": "crack"}]}
	got == {
		["r", ["entry_routes", 0, "treatment"]],
		["r", ["entry_routes", 0, "sealant_standard"]],
	}
}

test_unrecorded_without_entry_routes if {
	"unrecorded" == lib.verdict(rule, "entry_routes") with input as {} with data.profile as profile
}
