package policy.safety.respirators_in_high_levels_test

import data.policy.lib
import data.policy.safety.respirators_in_high_levels as rule
import rego.v2

# Common practice, with the figure of Iowa Adm. Code 641-44.3(3)(a)(3): respirators
# above 1 WL.
profile := {"safety": {"respirators_in_high_levels": {"level": {"si": 1}}}}

crew(fields) := {"safety": fields}

verdict(job) := v if v := lib.verdict(rule, "safety") with input as job with data.profile as profile

test_met if verdict(crew({"working_level": 1.2, "respirators_used": true})) == "met"

test_deficient if verdict(crew({"working_level": 1.01, "respirators_used": false})) == "deficient"

test_not_applicable_at_exactly_one if verdict(crew({"working_level": 1, "respirators_used": false})) == "not-applicable"

test_unrecorded if verdict(crew({"working_level": 1.2})) == "unrecorded"

test_unrecorded_level if verdict(crew({"respirators_used": false})) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {} with data.profile as profile
	got == {["safety", ["safety", "working_level"]], ["safety", ["safety", "respirators_used"]]}
}
