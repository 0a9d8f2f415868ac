package policy.survey.qualified_person_test

import data.policy.lib
import data.policy.survey.qualified_person as rule
import rego.v2

# SGM-SF 2017 (12/20) 5.4: a qualified professional before any work.
profile := {"survey": {"qualified_person": {"kinds": {"any_of": ["mitigation"]}}}}

job(person) := {"job": {"crew": [object.union({"id": "lead"}, person)]}, "diagnostics": {"surveyed_by": "lead"}}

verdict(job) := v if v := lib.verdict(rule, "diagnostics") with input as job with data.profile as profile

test_met if verdict(job({"credential": "RM-5521", "credential_kind": "mitigation"})) == "met"

test_deficient_with_another_credential if verdict(job({"credential": "EL-902", "credential_kind": "electrical"})) == "deficient"

test_unrecorded_without_the_number if verdict(job({"credential_kind": "mitigation"})) == "unrecorded"

test_unrecorded if verdict({}) == "unrecorded"

test_says_what_is_missing if {
	nobody := rule.missing with input as {} with data.profile as profile
	nobody == {["diagnostics", ["diagnostics", "surveyed_by"]]}
	unknown := rule.missing with input as job({}) with data.profile as profile
	unknown == {
		["diagnostics", ["job", "crew", 0, "credential"]],
		["diagnostics", ["job", "crew", 0, "credential_kind"]],
	}
}
