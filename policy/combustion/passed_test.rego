package policy.combustion.passed_test

import data.policy.combustion.passed as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 17.3 (from memory).

job(about) := {"diagnostics": {"backdraft_tests": [object.union({"id": "t", "appliance": "a"}, about)]}}

verdict(job) := v if v := lib.verdict(rule, "t") with input as job

test_met if verdict(job({"passed": true})) == "met"

test_deficient if verdict(job({"passed": false})) == "deficient"

test_unrecorded if verdict(job({})) == "unrecorded"

test_a_later_test_that_passed_makes_it_good if {
	again := {"diagnostics": {"backdraft_tests": [
		object.union({"id": "t", "appliance": "a", "passed": false, "at": {"si": 1}}, {}),
		{"id": "u", "appliance": "a", "passed": true, "system_on": true, "at": {"si": 2}},
	]}}
	verdict(again) == "met"
}

test_unrecorded_without_a_list if "unrecorded" == lib.verdict(rule, "diagnostics") with input as {}

test_no_list_needed_where_nothing_burns if {
	got := rule.subjects with input as {"house": {"combustion": []}}
	count(got) == 0
}
