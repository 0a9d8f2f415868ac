package policy.safety.plan_reviewed_test

import data.policy.lib
import data.policy.safety.plan_reviewed as rule
import rego.v2

# SGM-SF 2017 (12/20) 11.1.1: reviewed with each installer at least yearly. That a
# year has 365 days is our reading.
profile := {"safety": {"plan_reviewed": {"age": {"si": 31536000}, "not_for": {"any_of": ["tester", "reviewer"]}}}}

worker(role, age) := {
	"job": {"crew": [{"id": "w", "role": role}]},
	"derived": {"crew": [{"id": "w", "at": "/job/crew/0", "plan_age": age}]},
}

verdict(job) := v if v := lib.verdict(rule, "w") with input as job with data.profile as profile

test_met_at_exactly_one_year if verdict(worker("installer", {"si": 31536000})) == "met"

test_met_on_the_day if verdict(worker("lead", {"si": 0})) == "met"

test_deficient_a_day_later if verdict(worker("installer", {"si": 31622400})) == "deficient"

test_undetermined_when_reviewed_after if verdict(worker("installer", {"si": -86400})) == "undetermined"

test_unrecorded if verdict(worker("installer", {"undetermined": ["/job/crew/0/plan_reviewed"]})) == "unrecorded"

test_not_applicable_to_a_tester if verdict(worker("tester", {"si": 31622400})) == "not-applicable"

test_unrecorded_role if {
	verdict({
		"job": {"crew": [{"id": "w"}]},
		"derived": {"crew": [{"id": "w", "at": "/job/crew/0", "plan_age": {"si": 0}}]},
	}) == "unrecorded"
}

test_unrecorded_without_a_crew if {
	"unrecorded" == lib.verdict(rule, "crew") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {
		"job": {"crew": [{"id": "w"}]},
		"derived": {"crew": [{"id": "w", "at": "/job/crew/0"}]},
	}
	got == {
		["w", ["job", "crew", 0, "role"]],
		["w", ["derived", "crew", 0, "plan_age"]],
	}
}
