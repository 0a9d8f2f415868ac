package policy.papers.permits_numbered_test

import data.policy.lib
import data.policy.papers.permits_numbered as rule
import rego.v2

# common practice
profile := {"papers": {"permits_numbered": {"no_number": {"any_of": ["none", "pending"]}}}}

verdict(job, id) := v if v := lib.verdict(rule, id) with input as job with data.profile as profile

permit(status, number) := {"job": {"permits": [{"id": "p", "status": status, "number": number, "authority": "Alder Fork Township"}]}}

test_met if verdict(permit("issued", "E-2291"), "p") == "met"

test_deficient if verdict(permit("issued", "Pending"), "p") == "deficient"

test_not_applicable if verdict(permit("not-required", "none"), "p") == "not-applicable"

test_unrecorded if verdict({"job": {"permits": [{"id": "p", "status": "issued"}]}}, "p") == "unrecorded"

test_unrecorded_without_a_list if verdict({}, "job") == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"job": {"permits": [{"id": "p"}]}} with data.profile as profile
	{path[3] | some ["p", path] in got} == {"status", "number", "authority"}
}
