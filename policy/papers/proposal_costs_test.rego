package policy.papers.proposal_costs_test

import data.policy.lib
import data.policy.papers.proposal_costs as rule
import rego.v2

# EPA RMS 1994 18.1: in writing, before work starts: cost of installation and of
# a year's operation. RMS-LB 2018 (12/20) 4.2.2, family text: the proposal gives
# the cost of ownership.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(said) := {"closeout": {"proposal": {"costs": said}}}

test_met if verdict(record(true)) == "met"

test_deficient if verdict(record(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
