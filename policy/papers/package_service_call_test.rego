package policy.papers.package_service_call_test

import data.policy.lib
import data.policy.papers.package_service_call as rule
import rego.v2

# CCAH 2020 exhibit 2, a form for occupants: call for service when the gauge
# differs much from its mark or reads zero.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(said) := {"closeout": {"package": {"service_change": said}}}

test_met if verdict(record(true)) == "met"

test_deficient if verdict(record(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
