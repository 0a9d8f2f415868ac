package policy.papers.proposal_compliance_test

import data.policy.lib
import data.policy.papers.proposal_compliance as rule
import rego.v2

# EPA RMS 1994 18.1: in writing, before work starts: a statement that standards
# and codes are followed.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(said) := {"closeout": {"proposal": {"compliance_statement": said}}}

test_met if verdict(record(true)) == "met"

test_deficient if verdict(record(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
