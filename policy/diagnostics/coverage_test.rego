package policy.diagnostics.coverage_test

import data.policy.diagnostics.coverage as rule
import data.policy.lib
import rego.v2

# common practice: the whole slab is nearest to holes that pull.
profile := {"diagnostics": {"coverage": {"share": {"si": 1}}}}

job(values) := {
	"diagnostics": {"communication_tests": [{"id": "t", "holes": [{"id": "h", "pressure": {"si": -2}}]}]},
	"derived": {"communication": [object.union({"id": "t", "at": ""}, values)]},
}

verdict(job) := v if v := lib.verdict(rule, "t") with input as job with data.profile as profile

test_unrecorded if verdict(job({})) == "unrecorded"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "diagnostics") with input as {} with data.profile as profile
}

covered(share, pulling) := job({"coverage": {"si": share}, "holes_total": 4, "holes_pulling": pulling})

test_met if verdict(covered(1, 4)) == "met"

test_deficient_with_a_part_left_out if verdict(covered(0.75, 3)) == "deficient"

test_deficient_within_the_circle_of_reach_when_a_hole_does_not_pull if verdict(covered(1, 3)) == "deficient"

test_unrecorded_when_it_is_not_known_which_holes_pull if verdict(job({"coverage": {"si": 1}})) == "unrecorded"

test_unrecorded_where_only_smoke_was_tried if {
	smoke := object.union(covered(1, 4), {"diagnostics": {"communication_tests": [{"id": "t", "holes": [{"id": "h", "smoke": "down"}]}]}})
	verdict(smoke) == "unrecorded"
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {"diagnostics": {"communication_tests": [{"id": "t", "holes": [{"id": "h"}]}]}, "derived": {"communication": [{"id": "t", "at": ""}]}}
	got == {
		["t", ["diagnostics", "communication_tests", 0, "holes", 0, "pressure"]],
		["t", ["derived", "communication", 0, "coverage"]],
	}
}

test_says_that_the_holes_are_missing if {
	got := rule.missing with data.profile as profile with input as {"diagnostics": {"communication_tests": [{"id": "t"}]}}
	got == {["t", ["diagnostics", "communication_tests", 0, "holes"]]}
}
