package policy.survey.floor_plan_test

import data.policy.lib
import data.policy.survey.floor_plan as rule
import rego.v2

# SGM-SF 2017 (12/20) 5.4.2; EPA RMS 1994 11.3 (from memory).
job(answer) := {"diagnostics": {"floor_plan": answer}}

verdict(job) := v if v := lib.verdict(rule, "diagnostics") with input as job

test_met if verdict(job(true)) == "met"

test_deficient if verdict(job(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
