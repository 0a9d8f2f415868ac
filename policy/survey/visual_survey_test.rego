package policy.survey.visual_survey_test

import data.policy.lib
import data.policy.survey.visual_survey as rule
import rego.v2

# 25 Pa. Code 240.308(a); EPA RMS 1994 11.1 (from memory).
job(answer) := {"diagnostics": {"visual_survey": answer}}

verdict(job) := v if v := lib.verdict(rule, "diagnostics") with input as job

test_met if verdict(job(true)) == "met"

test_deficient if verdict(job(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
