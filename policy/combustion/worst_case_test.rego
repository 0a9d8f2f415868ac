package policy.combustion.worst_case_test

import data.policy.combustion.worst_case as rule
import data.policy.lib
import rego.v2

# Common appendix text on draft tests (from memory): close the house, run the
# exhausts, then fire the appliance; common practice.

job(about) := {"diagnostics": {"backdraft_tests": [object.union({"id": "t", "appliance": "a"}, about)]}}

verdict(job) := v if v := lib.verdict(rule, "t") with input as job

test_met if verdict(job({"system_on": true, "worst_case": true})) == "met"

test_deficient if verdict(job({"system_on": true, "worst_case": false})) == "deficient"

test_a_reading_with_the_system_off_is_for_comparison if {
	verdict(job({"system_on": false, "worst_case": false})) == "not-applicable"
}

test_unrecorded if verdict(job({"system_on": true})) == "unrecorded"

test_unrecorded_when_it_is_not_said_if_the_system_ran if verdict(job({"worst_case": true})) == "unrecorded"

test_unrecorded_without_a_list if "unrecorded" == lib.verdict(rule, "diagnostics") with input as {}

test_no_list_needed_where_nothing_burns if {
	got := rule.subjects with input as {"house": {"combustion": []}}
	count(got) == 0
}

test_says_what_is_missing if {
	got := rule.missing with input as job({})
	got == {
		["t", ["diagnostics", "backdraft_tests", 0, "system_on"]],
		["t", ["diagnostics", "backdraft_tests", 0, "worst_case"]],
	}
}
