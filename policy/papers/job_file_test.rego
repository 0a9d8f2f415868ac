package policy.papers.job_file_test

import data.policy.lib
import data.policy.papers.job_file as rule
import rego.v2

# EPA RMS 1994 18.2: summary and sketch of the investigation, radon tests before
# and after, diagnostics before and after, contracts and warranties, description of
# the system.
profile := {"papers": {"job_file": {"contents": {"any_of": ["survey-and-sketch", "radon-tests", "diagnostics", "contracts", "system-description"]}}}}

verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job with data.profile as profile

record(contents) := {"closeout": {"records": {"contents": contents}}}

test_met if verdict(record(["survey-and-sketch", "radon-tests", "diagnostics", "contracts", "system-description", "cost"])) == "met"

test_deficient if verdict(record(["radon-tests"])) == "deficient"

test_deficient_when_empty if verdict(record([])) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
