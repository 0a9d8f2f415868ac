package policy.survey.earlier_results_reviewed_test

import data.policy.lib
import data.policy.survey.earlier_results_reviewed as rule
import rego.v2

# EPA RMS 1994 10.1; 32 Ill. Adm. Code 422.150(e)(1) (both from memory).
job(new, list, answer) := {
	"house": {"new_construction": new},
	"measurements": {"tests": list},
	"diagnostics": {"earlier_results_reviewed": answer},
}

earlier := [{"id": "b", "phase": "before"}]

verdict(job) := v if v := lib.verdict(rule, "diagnostics") with input as job

test_met if verdict(job(false, [], true)) == "met"

test_met_in_a_new_house_that_was_tested if verdict(job(true, earlier, true)) == "met"

test_deficient if {
	verdict(job(false, [], false)) == "deficient"
	verdict(job(true, earlier, false)) == "deficient"
}

test_unrecorded if verdict({"house": {"new_construction": false}}) == "unrecorded"

test_not_applicable_in_a_new_house_without_tests if verdict(job(true, [], false)) == "not-applicable"

test_what_is_not_said_exempts_nothing if {
	verdict(object.remove(job(true, [], true), ["house"])) == "unrecorded"
	verdict(object.remove(job(true, [], true), ["measurements"])) == "unrecorded"
	verdict(job(true, [{"id": "t"}], true)) == "unrecorded"
}

test_says_what_is_missing if {
	none := rule.missing with input as {}
	none == {
		["diagnostics", ["house", "new_construction"]],
		["diagnostics", ["measurements", "tests"]],
		["diagnostics", ["diagnostics", "earlier_results_reviewed"]],
	}
	vague := rule.missing with input as job(true, [{"id": "t"}], true)
	vague == {["diagnostics", ["measurements", "tests", 0, "phase"]]}
}
