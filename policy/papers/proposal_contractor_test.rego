package policy.papers.proposal_contractor_test

import data.policy.lib
import data.policy.papers.proposal_contractor as rule
import rego.v2

# EPA RMS 1994 18.1: in writing, before work starts: the contractor's
# identification number. RMS-LB 2018 (12/20) 4.2.2, family text: the proposal
# gives name, address, phone, certification and signature.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(said) := {"closeout": {"proposal": {"contractor_id": said}}}

test_met if verdict(record(true)) == "met"

test_deficient if verdict(record(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
