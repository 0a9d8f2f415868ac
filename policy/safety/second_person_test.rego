package policy.safety.second_person_test

import data.policy.lib
import data.policy.safety.second_person as rule
import rego.v2

# Common practice. SGM-SF 2017 (12/20) 11.1.1 names the second person among the
# subjects of the protection plan, as information.
profile := {"safety": {"second_person": {}}}

crew(fields) := {"safety": fields}

verdict(job) := v if v := lib.verdict(rule, "safety") with input as job with data.profile as profile

test_met if verdict(crew({"crawlspace_entered": true, "crawlspace_buddy": true})) == "met"

test_deficient if verdict(crew({"crawlspace_entered": true, "crawlspace_buddy": false})) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"

test_unrecorded_condition if verdict(crew({"crawlspace_buddy": false})) == "unrecorded"

test_not_applicable if verdict(crew({"crawlspace_entered": false, "crawlspace_buddy": false})) == "not-applicable"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {["safety", ["safety", "crawlspace_entered"]], ["safety", ["safety", "crawlspace_buddy"]]}
}
