package policy.papers.permits_closed_test

import data.policy.lib
import data.policy.papers.permits_closed as rule
import rego.v2

# common practice
profile := {"papers": {"permits_closed": {"done": {"any_of": ["closed", "not-required"]}}}}

verdict(job, id) := v if v := lib.verdict(rule, id) with input as job with data.profile as profile

permit(status) := {"job": {"permits": [{"id": "p", "status": status}]}}

test_met if verdict(permit("closed"), "p") == "met"

test_met_where_none_is_required if verdict(permit("not-required"), "p") == "met"

test_deficient if verdict(permit("issued"), "p") == "deficient"

test_unrecorded if verdict({"job": {"permits": [{"id": "p"}]}}, "p") == "unrecorded"

test_unrecorded_without_a_list if verdict({}, "job") == "unrecorded"
