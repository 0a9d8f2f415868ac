package policy.survey.earlier_results_reviewed_test

import data.policy.lib
import data.policy.survey.earlier_results_reviewed as rule
import rego.v2

# EPA RMS 1994 10.1; 32 Ill. Adm. Code 422.150(e)(1) (both from memory).
job(answer) := {"diagnostics": {"earlier_results_reviewed": answer}}

verdict(job) := v if v := lib.verdict(rule, "diagnostics") with input as job

test_met if verdict(job(true)) == "met"

test_deficient if verdict(job(false)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
