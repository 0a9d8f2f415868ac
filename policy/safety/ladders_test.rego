package policy.safety.ladders_test

import data.policy.lib
import data.policy.safety.ladders as rule
import rego.v2

# EPA RMS 1994 section 12 (from memory): ladders and scaffold are set safely.
profile := {"safety": {"ladders": {}}}

crew(fields) := {"safety": fields}

verdict(job) := v if v := lib.verdict(rule, "safety") with input as job with data.profile as profile

test_met if verdict(crew({"work_at_height": true, "ladders_set": true})) == "met"

test_deficient if verdict(crew({"work_at_height": true, "ladders_set": false})) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"

test_unrecorded_condition if verdict(crew({"ladders_set": false})) == "unrecorded"

test_not_applicable if verdict(crew({"work_at_height": false, "ladders_set": false})) == "not-applicable"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {["safety", ["safety", "work_at_height"]], ["safety", ["safety", "ladders_set"]]}
}
