package policy.papers.proposal_test_options_test

import data.policy.lib
import data.policy.papers.proposal_test_options as rule
import rego.v2

# RMS-LB 2018 (12/20) 4.2.2, family text: the proposal gives the options for
# testing, a third party among them.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(said) := {"closeout": {"proposal": {"test_options": said}}}

test_met if verdict(record(true)) == "met"

test_deficient if verdict(record(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
