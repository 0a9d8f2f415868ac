package policy.papers.package_results_test

import data.policy.lib
import data.policy.papers.package_results as rule
import rego.v2

# EPA RMS 1994 18.3, from memory: the package for the client holds the radon
# tests before and after.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(said) := {"closeout": {"package": {"results_before_after": said}}}

test_met if verdict(record(true)) == "met"

test_deficient if verdict(record(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
