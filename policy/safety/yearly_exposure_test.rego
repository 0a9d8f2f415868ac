package policy.safety.yearly_exposure_test

import data.policy.lib
import data.policy.safety.yearly_exposure as rule
import rego.v2

# 32 Ill. Adm. Code 422.70(e): 4 WLM in 12 months, at an equilibrium of 50 %.
profile := {"safety": {"yearly_exposure": {"maximum": {"si": 4}, "not_for": {"any_of": ["reviewer"]}}}}

worker(role, value) := {
	"job": {"crew": [{"id": "w", "role": role}]},
	"derived": {"crew": [{"id": "w", "at": "/job/crew/0", "past_year": value}]},
}

verdict(job) := v if v := lib.verdict(rule, "w") with input as job with data.profile as profile

test_met_at_exactly_four if verdict(worker("installer", {"si": 4})) == "met"

test_deficient_at_4_01 if verdict(worker("installer", {"si": 4.01})) == "deficient"

test_unrecorded if verdict(worker("installer", {"undetermined": ["/job/crew/0/exposure_past_year"]})) == "unrecorded"

test_not_applicable_to_a_reviewer if verdict(worker("reviewer", {"si": 4.01})) == "not-applicable"

test_unrecorded_role if {
	verdict({
		"job": {"crew": [{"id": "w"}]},
		"derived": {"crew": [{"id": "w", "at": "/job/crew/0", "past_year": {"si": 0}}]},
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
		["w", ["derived", "crew", 0, "past_year"]],
	}
}
