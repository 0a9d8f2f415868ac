package policy.papers.warranty_level_test

import data.policy.lib
import data.policy.papers.warranty_level as rule
import rego.v2

# RMS-LB 2018 (12/20) 4.2.2(d), family text: the warranty must say whether a
# radon level is promised.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(said) := {"closeout": {"warranty": {"states_level": said}}}

test_met if verdict(record(true)) == "met"

test_deficient if verdict(record(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
