package policy.diagnostics.untested_parts_test

import data.policy.diagnostics.untested_parts as rule
import data.policy.lib
import rego.v2

# common practice: no spot of the slab is farther from a hole than suction reached.
profile := {}

job(values) := {
	"diagnostics": {"communication_tests": [{"id": "t", "holes": [{"id": "h", "pressure": {"si": -2}}]}]},
	"derived": {"communication": [object.union({"id": "t", "at": ""}, values)]},
}

verdict(job) := v if v := lib.verdict(rule, "t") with input as job with data.profile as profile

test_unrecorded if verdict(job({})) == "unrecorded"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "diagnostics") with input as {} with data.profile as profile
}

far(untested, reach) := job({"farthest_untested": {"si": untested}, "reach": {"si": reach}})

test_met_at_the_same_distance if verdict(far(6, 6)) == "met"

test_deficient_beyond if verdict(far(6.1, 6)) == "deficient"

test_deficient_when_no_hole_pulls if verdict(far(3, 0)) == "deficient"

test_unrecorded_without_the_reach if verdict(job({"farthest_untested": {"si": 3}})) == "unrecorded"

test_unrecorded_where_only_smoke_was_tried if {
	smoke := object.union(far(6, 6), {"diagnostics": {"communication_tests": [{"id": "t", "holes": [{"id": "h", "smoke": "down"}]}]}})
	verdict(smoke) == "unrecorded"
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {"diagnostics": {"communication_tests": [{"id": "t", "holes": [{"id": "h"}]}]}, "derived": {"communication": [{"id": "t", "at": ""}]}}
	got == {
		["t", ["diagnostics", "communication_tests", 0, "holes", 0, "pressure"]],
		["t", ["derived", "communication", 0, "farthest_untested"]],
		["t", ["derived", "communication", 0, "reach"]],
	}
}
