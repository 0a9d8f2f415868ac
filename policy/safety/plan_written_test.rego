package policy.safety.plan_written_test

import data.policy.lib
import data.policy.safety.plan_written as rule
import rego.v2

# SGM-SF 2017 (12/20) 11.1.1: a written plan protects installers.
profile := {"safety": {"plan_written": {}}}

crew(fields) := {"safety": fields}

verdict(job) := v if v := lib.verdict(rule, "safety") with input as job with data.profile as profile

test_met if verdict(crew({"plan_written": true})) == "met"

test_deficient if verdict(crew({"plan_written": false})) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
