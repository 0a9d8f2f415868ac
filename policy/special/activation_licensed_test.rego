package policy.special.activation_licensed_test

import data.policy.lib
import data.policy.special.activation_licensed as rule
import rego.v2

# 420 ILCS 52 (from memory, summary): only a licensed radon contractor adds a fan to,
# or alters, a passive pipe.
job(crew) := {"job": {"purpose": "activation-of-rough-in", "crew": crew}}

verdict(job) := v if v := lib.verdict(rule, "job") with input as job

test_met if verdict(job([{"id": "c", "credential_kind": "mitigation", "credential": "RM-1"}])) == "met"

test_deficient if verdict(job([{"id": "c", "credential_kind": "electrical", "credential": "E-1"}])) == "deficient"

test_deficient_without_a_crew if verdict(job([])) == "deficient"

test_unrecorded_kind if verdict(job([{"id": "c", "credential": "RM-1"}])) == "unrecorded"

test_unrecorded_credential if verdict(job([{"id": "c", "credential_kind": "mitigation"}])) == "unrecorded"

test_unrecorded if verdict({"job": {"purpose": "activation-of-rough-in"}}) == "unrecorded"

test_unrecorded_purpose if {
	verdict({"job": {"crew": [{"id": "c", "credential_kind": "mitigation", "credential": "RM-1"}]}}) == "unrecorded"
}

test_not_applicable_to_other_jobs if verdict({"job": {"purpose": "new-installation"}}) == "not-applicable"

test_says_what_is_missing if {
	got := rule.missing with input as {"job": {"crew": [{"id": "c"}, {"id": "d", "credential_kind": "mitigation"}]}}
	got == {
		["job", ["job", "purpose"]],
		["job", ["job", "crew", 0, "credential_kind"]],
		["job", ["job", "crew", 1, "credential"]],
	}
}

test_says_that_the_crew_is_missing if {
	got := rule.missing with input as {}
	got == {["job", ["job", "purpose"]], ["job", ["job", "crew"]]}
}
