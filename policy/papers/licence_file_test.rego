package policy.papers.licence_file_test

import data.policy.lib
import data.policy.papers.licence_file as rule
import rego.v2

# 32 Ill. Adm. Code 422.70(f): tests, mitigations, quality assurance, calibration,
# repairs, plans for worker protection.
profile := {"papers": {"licence_file": {"contents": {"any_of": ["radon-tests", "system-description", "quality-assurance", "calibration", "repairs", "worker-plans"]}}}}

verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job with data.profile as profile

record(contents) := {"closeout": {"records": {"contents": contents}}}

test_met if verdict(record(["radon-tests", "system-description", "quality-assurance", "calibration", "repairs", "worker-plans", "cost"])) == "met"

test_deficient if verdict(record(["radon-tests"])) == "deficient"

test_deficient_when_empty if verdict(record([])) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
