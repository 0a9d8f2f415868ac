package policy.papers.credentials_test

import data.policy.lib
import data.policy.papers.credentials as rule
import rego.v2

# common practice
profile := {"papers": {"credentials": {
	"roles": {"any_of": ["lead", "electrician"]},
	"no_credential": {"any_of": ["none", "applied for"]},
}}}

verdict(job, id) := v if v := lib.verdict(rule, id) with input as job with data.profile as profile

worker(role, credential) := {"job": {"crew": [{"id": "w", "role": role, "credential": credential}]}}

test_met if verdict(worker("lead", "RM-5521"), "w") == "met"

test_deficient if verdict(worker("electrician", "Applied for"), "w") == "deficient"

test_not_applicable_to_helpers if verdict(worker("installer", "none"), "w") == "not-applicable"

test_unrecorded if verdict({"job": {"crew": [{"id": "w", "role": "lead"}]}}, "w") == "unrecorded"

test_unrecorded_without_a_crew if verdict({}, "job") == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"job": {"crew": [{"id": "w"}]}} with data.profile as profile
	got == {["w", ["job", "crew", 0, "role"]], ["w", ["job", "crew", 0, "credential"]]}
}
