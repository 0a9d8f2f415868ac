package policy.survey.retest_advised_test

import data.policy.lib
import data.policy.survey.retest_advised as rule
import rego.v2

# 32 Ill. Adm. Code 422.150(e)(1) (from memory).
job(valid, advised) := {"diagnostics": {"earlier_test_valid": valid, "retest_advised": advised}}

verdict(job) := v if v := lib.verdict(rule, "diagnostics") with input as job

test_met if verdict(job(false, true)) == "met"

test_deficient if verdict(job(false, false)) == "deficient"

test_not_applicable_after_a_valid_test if verdict(job(true, false)) == "not-applicable"

test_unrecorded if verdict({"diagnostics": {"retest_advised": true}}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {
		["diagnostics", ["diagnostics", "earlier_test_valid"]],
		["diagnostics", ["diagnostics", "retest_advised"]],
	}
}
