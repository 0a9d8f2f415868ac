package policy.papers.credentials_valid_test

import data.policy.lib
import data.policy.papers.credentials_valid as rule
import rego.v2

# common practice: the last day of a credential still counts.
profile := {"papers": {"credentials_valid": {"roles": {"any_of": ["lead"]}, "least": {"si": 0}}}}

verdict(job, id) := v if v := lib.verdict(rule, id) with input as job with data.profile as profile

worker(role, margin) := {
	"job": {"crew": [{"id": "w", "role": role}]},
	"derived": {"crew": [{"id": "w", "at": "/job/crew/0", "credential_margin": margin}]},
}

test_met_on_its_last_day if verdict(worker("lead", {"si": 0}), "w") == "met"

test_deficient_a_day_later if verdict(worker("lead", {"si": -86400}), "w") == "deficient"

test_not_applicable_to_helpers if verdict(worker("installer", {"si": -86400}), "w") == "not-applicable"

test_unrecorded if verdict(worker("lead", {"undetermined": ["/job/crew/0/credential_expires"]}), "w") == "unrecorded"

test_unrecorded_without_a_crew if verdict({}, "job") == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {
		"job": {"crew": [{"id": "w"}]},
		"derived": {"crew": [{"id": "w", "at": "/job/crew/0"}]},
	}
	got == {["w", ["job", "crew", 0, "role"]], ["w", ["derived", "crew", 0, "credential_margin"]]}
}
