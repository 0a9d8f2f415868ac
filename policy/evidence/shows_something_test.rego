package policy.evidence.shows_something_test

import data.policy.evidence.shows_something as rule
import data.policy.lib
import rego.v2

# common practice
verdict(job, id) := v if v := lib.verdict(rule, id) with input as job

test_met if verdict({"evidence": [{"id": "p", "shows": ["sump"]}]}, "p") == "met"

test_deficient if verdict({"evidence": [{"id": "p", "shows": []}]}, "p") == "deficient"

test_unrecorded if verdict({"evidence": [{"id": "p"}]}, "p") == "unrecorded"

test_unrecorded_without_a_list if verdict({}, "evidence") == "unrecorded"
