package policy.papers.reporting_duties_told_test

import data.policy.lib
import data.policy.papers.reporting_duties_told as rule
import rego.v2

# ANSI/AARST SGM-SF 2017 (12/20) 4.4.1: the contractor tells the client of state
# or local reporting duties.
verdict(job) := v if v := lib.verdict(rule, "job") with input as job

record(said) := {"job": {"jurisdiction": {"reporting_duties_told": said}}}

test_met if verdict(record(true)) == "met"

test_deficient if verdict(record(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
