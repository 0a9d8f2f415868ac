package policy.papers.proposal_maintenance_test

import data.policy.lib
import data.policy.papers.proposal_maintenance as rule
import rego.v2

# EPA RMS 1994 18.1: in writing, before work starts: maintenance by the owner.
# RMS-LB 2018 (12/20) 4.2.2, family text: the proposal gives a description of
# operation and maintenance.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(said) := {"closeout": {"proposal": {"owner_maintenance": said}}}

test_met if verdict(record(true)) == "met"

test_deficient if verdict(record(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
