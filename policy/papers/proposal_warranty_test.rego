package policy.papers.proposal_warranty_test

import data.policy.lib
import data.policy.papers.proposal_warranty as rule
import rego.v2

# EPA RMS 1994 18.1: in writing, before work starts: the terms of the warranty.
# RMS-LB 2018 (12/20) 4.2.2, family text: the proposal gives the warranty.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(said) := {"closeout": {"proposal": {"warranty_terms": said}}}

test_met if verdict(record(true)) == "met"

test_deficient if verdict(record(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
