package policy.sealing.fumes_notice_test

import data.policy.lib
import data.policy.sealing.fumes_notice as rule
import rego.v2

# SGM-SF 2017 (12/20) 4.3.3: a notice about fumes is advised.
profile := {"sealing": {"fumes_notice": {}}}

told(used, notice) := {"safety": {"solvents_used": used}, "closeout": {"fumes_notice": notice}}

verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job with data.profile as profile

test_met if verdict(told(true, true)) == "met"

test_deficient if verdict(told(true, false)) == "deficient"

test_not_applicable_without_solvents if verdict(told(false, false)) == "not-applicable"

test_unrecorded if verdict({}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {
		["closeout", ["safety", "solvents_used"]],
		["closeout", ["closeout", "fumes_notice"]],
	}
}
