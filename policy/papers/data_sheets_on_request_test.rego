package policy.papers.data_sheets_on_request_test

import data.policy.lib
import data.policy.papers.data_sheets_on_request as rule
import rego.v2

# ANSI/AARST SGM-SF 2017 (12/20) 4.3.4: safety data sheets ready on request.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(used, said) := {"safety": {"solvents_used": used}, "closeout": {"sds_available": said}}

test_met if verdict(record(true, true)) == "met"

test_deficient if verdict(record(true, false)) == "deficient"

test_unrecorded if verdict({"safety": {"solvents_used": true}}) == "unrecorded"

test_not_applicable_where_none_were_used if verdict(record(false, false)) == "not-applicable"

test_unknown_use_exempts_nothing if verdict({"closeout": {"sds_available": true}}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {["closeout", ["safety", "solvents_used"]], ["closeout", ["closeout", "sds_available"]]}
}
