package policy.sealing.every_route_treated_test

import data.policy.lib
import data.policy.sealing.every_route_treated as rule
import rego.v2

# Common practice: whatever was found open is closed, or it is said why not.
profile := {"sealing": {"every_route_treated": {"treatments": {"any_of": ["sealed", "trapped", "not-reachable"]}}}}

opening(fields) := {"entry_routes": [object.union({"id": "r"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "r") with input as job with data.profile as profile

test_met if verdict(opening({"treatment": "sealed"})) == "met"

test_met_out_of_reach if verdict(opening({"kind": "block-core", "treatment": "not-reachable"})) == "met"

test_deficient if verdict(opening({"kind": "block-core", "treatment": "left-open"})) == "deficient"

test_unrecorded if verdict(opening({"kind": "crack"})) == "unrecorded"

test_unrecorded_without_entry_routes if {
	"unrecorded" == lib.verdict(rule, "entry_routes") with input as {} with data.profile as profile
}

test_no_subject_when_none_was_found if {
	got := rule.subjects with input as {"entry_routes": []}
	count(got) == 0
}
