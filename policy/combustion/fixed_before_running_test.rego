package policy.combustion.fixed_before_running_test

import data.policy.combustion.fixed_before_running as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 17.3 (from memory): a problem is put right before the system stays on.

job(about) := {"diagnostics": {"backdraft_tests": [object.union({"id": "t", "appliance": "a"}, about)]}}

verdict(job) := v if v := lib.verdict(rule, "t") with input as job

test_met if verdict(job({"passed": false, "fixed_before_running": true})) == "met"

test_deficient if verdict(job({"passed": false, "fixed_before_running": false})) == "deficient"

test_not_applicable_when_it_passed if verdict(job({"passed": true, "fixed_before_running": false})) == "not-applicable"

test_unrecorded if verdict(job({"fixed_before_running": true})) == "unrecorded"

test_unrecorded_without_a_list if "unrecorded" == lib.verdict(rule, "diagnostics") with input as {}

test_no_list_needed_where_nothing_burns if {
	got := rule.subjects with input as {"house": {"combustion": []}}
	count(got) == 0
}

test_says_what_is_missing if {
	got := rule.missing with input as job({})
	got == {
		["t", ["diagnostics", "backdraft_tests", 0, "passed"]],
		["t", ["diagnostics", "backdraft_tests", 0, "fixed_before_running"]],
	}
}
