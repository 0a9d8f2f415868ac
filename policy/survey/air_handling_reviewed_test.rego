package policy.survey.air_handling_reviewed_test

import data.policy.lib
import data.policy.survey.air_handling_reviewed as rule
import rego.v2

# EPA RMS 1994 14.8.1 (from memory).
job(changed, reviewed) := {"house": {"air_handling": {"changed_as_fix": changed, "change_reviewed": reviewed}}}

verdict(job) := v if v := lib.verdict(rule, "house") with input as job

test_met if verdict(job(true, true)) == "met"

test_deficient if verdict(job(true, false)) == "deficient"

test_not_applicable_without_a_change if verdict(job(false, false)) == "not-applicable"

test_unrecorded if verdict({"house": {"air_handling": {"change_reviewed": true}}}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {
		["house", ["house", "air_handling", "changed_as_fix"]],
		["house", ["house", "air_handling", "change_reviewed"]],
	}
}
