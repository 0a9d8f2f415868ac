package policy.safety.medical_checks_test

import data.policy.lib
import data.policy.safety.medical_checks as rule
import rego.v2

# 29 CFR 1926.1153(h): offered to who must wear a respirator on 30 days a year or
# more.
profile := {"safety": {"medical_checks": {"days": {"si": 30}}}}

crew(fields) := {"safety": fields}

verdict(job) := v if v := lib.verdict(rule, "safety") with input as job with data.profile as profile

test_met if verdict(crew({"respirator_days_a_year": 30, "medical_checks": true})) == "met"

test_deficient_at_exactly_thirty_days if verdict(crew({"respirator_days_a_year": 30, "medical_checks": false})) == "deficient"

test_not_applicable_below if verdict(crew({"respirator_days_a_year": 29, "medical_checks": false})) == "not-applicable"

test_unrecorded if verdict(crew({"respirator_days_a_year": 40})) == "unrecorded"

test_unrecorded_days if verdict(crew({"medical_checks": false})) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {["safety", ["safety", "respirator_days_a_year"]], ["safety", ["safety", "medical_checks"]]}
}
