package policy.safety.level_worked_in_test

import data.policy.lib
import data.policy.safety.level_worked_in as rule
import rego.v2

# 32 Ill. Adm. Code 422.70(e): 30 pCi/L for work of 40 hours in all 52 weeks. As it
# is a level for steady work, one job above it is no breach.
profile := {"safety": {"level_worked_in": {"maximum": {"si": 1110}, "not_for": {"any_of": ["reviewer"]}}}}

worker(role, value) := {
	"job": {"crew": [{"id": "w", "role": role}]},
	"derived": {"crew": [{"id": "w", "at": "/job/crew/0", "level": value}]},
}

verdict(job) := v if v := lib.verdict(rule, "w") with input as job with data.profile as profile

test_met_at_exactly_thirty_picocuries if verdict(worker("installer", {"si": 1110})) == "met"

test_deficient_at_thirty_one_picocuries if verdict(worker("installer", {"si": 1147})) == "deficient"

test_unrecorded if verdict(worker("installer", {"undetermined": ["/job/crew/0/exposure_level"]})) == "unrecorded"

test_not_applicable_to_a_reviewer if verdict(worker("reviewer", {"si": 1147})) == "not-applicable"

test_unrecorded_role if {
	verdict({
		"job": {"crew": [{"id": "w"}]},
		"derived": {"crew": [{"id": "w", "at": "/job/crew/0", "level": {"si": 0}}]},
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
		["w", ["derived", "crew", 0, "level"]],
	}
}
