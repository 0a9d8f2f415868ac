package policy.papers.proposal_signed_test

import data.policy.lib
import data.policy.papers.proposal_signed as rule
import rego.v2

# common practice: a contract is signed before the work starts.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(said) := {"closeout": {"proposal": {"signed": said}}}

test_met if verdict(record(true)) == "met"

test_deficient if verdict(record(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
