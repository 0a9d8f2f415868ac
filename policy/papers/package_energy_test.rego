package policy.papers.package_energy_test

import data.policy.lib
import data.policy.papers.package_energy as rule
import rego.v2

# common practice; SGM-SF 2017 (12/20) 13.7.2.2 prints it for vapor intrusion
# only.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(said) := {"closeout": {"package": {"energy_estimate": said}}}

test_met if verdict(record(true)) == "met"

test_deficient if verdict(record(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
