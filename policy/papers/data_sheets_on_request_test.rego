package policy.papers.data_sheets_on_request_test

import data.policy.lib
import data.policy.papers.data_sheets_on_request as rule
import rego.v2

# ANSI/AARST SGM-SF 2017 (12/20) 4.3.4: safety data sheets ready on request.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(said) := {"closeout": {"sds_available": said}}

test_met if verdict(record(true)) == "met"

test_deficient if verdict(record(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
