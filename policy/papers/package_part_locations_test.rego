package policy.papers.package_part_locations_test

import data.policy.lib
import data.policy.papers.package_part_locations as rule
import rego.v2

# common practice; SGM-SF 2017 (12/20) Table 13.7 prints it for vapor intrusion
# and managed buildings only.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(said) := {"closeout": {"package": {"part_locations": said}}}

test_met if verdict(record(true)) == "met"

test_deficient if verdict(record(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
