package policy.sealing.unreachable_told_test

import data.policy.lib
import data.policy.sealing.unreachable_told as rule
import rego.v2

# RMS-LB 2018 (12/20) 7.1.1: openings out of reach are told to the client and put
# in the maintenance papers. EPA RMS 1994 14.5.3 and 14.5.4 (from memory) and an
# Illinois training text: the same.
profile := {"sealing": {"unreachable_told": {}}}

left(told, listed) := {
	"entry_routes": [{"id": "r", "treatment": "not-reachable", "client_told": told}],
	"closeout": {"package": {"unsealed_openings": listed}},
}

verdict(job) := v if v := lib.verdict(rule, "r") with input as job with data.profile as profile

test_met if verdict(left(true, true)) == "met"

test_deficient_when_not_told if verdict(left(false, true)) == "deficient"

test_deficient_when_not_in_the_papers if verdict(left(true, false)) == "deficient"

test_unrecorded if verdict({"entry_routes": [{"id": "r", "treatment": "not-reachable", "client_told": true}]}) == "unrecorded"

test_unrecorded_treatment if verdict({"entry_routes": [{"id": "r"}]}) == "unrecorded"

test_sealed_openings_are_no_subject if {
	got := rule.subjects with input as {"entry_routes": [{"id": "r", "treatment": "sealed"}]}
	count(got) == 0
}

test_unrecorded_without_entry_routes if {
	"unrecorded" == lib.verdict(rule, "entry_routes") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"entry_routes": [{"id": "a", "treatment": "not-reachable"}, {"id": "b"}]}
	got == {
		["a", ["entry_routes", 0, "client_told"]],
		["a", ["closeout", "package", "unsealed_openings"]],
		["b", ["entry_routes", 1, "treatment"]],
	}
}
