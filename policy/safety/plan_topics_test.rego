package policy.safety.plan_topics_test

import data.policy.lib
import data.policy.safety.plan_topics as rule
import rego.v2

# SGM-SF 2017 (12/20) 11.1.1, as information: ladders and scaffold, electricity,
# a second person in crawlspaces and confined spaces, tests for oxygen.
profile := {"safety": {"plan_topics": {"topics": {"any_of": ["ladders", "electrical", "buddy-system"]}}}}

plan(fields) := {"safety": fields}

verdict(job) := v if v := lib.verdict(rule, "safety") with input as job with data.profile as profile

test_met if {
	verdict(plan({"plan_written": true, "plan_topics": ["ladders", "electrical", "buddy-system", "dust"]})) == "met"
}

test_deficient_with_one_left_out if {
	verdict(plan({"plan_written": true, "plan_topics": ["ladders", "electrical"]})) == "deficient"
}

test_deficient_when_empty if verdict(plan({"plan_written": true, "plan_topics": []})) == "deficient"

test_unrecorded if verdict(plan({"plan_written": true})) == "unrecorded"

test_unrecorded_plan if verdict(plan({"plan_topics": ["ladders"]})) == "unrecorded"

test_not_applicable_without_a_plan if verdict(plan({"plan_written": false})) == "not-applicable"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {["safety", ["safety", "plan_written"]], ["safety", ["safety", "plan_topics"]]}
}
