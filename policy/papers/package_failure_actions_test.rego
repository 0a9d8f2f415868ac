package policy.papers.package_failure_actions_test

import data.policy.lib
import data.policy.papers.package_failure_actions as rule
import rego.v2

# EPA RMS 1994 18.3, from memory: the package for the client holds what to do
# when the warning device shows failure.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(said) := {"closeout": {"package": {"failure_actions": said}}}

test_met if verdict(record(true)) == "met"

test_deficient if verdict(record(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
