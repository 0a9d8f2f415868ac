package policy.safety.tools_grounded_test

import data.policy.lib
import data.policy.safety.tools_grounded as rule
import rego.v2

# EPA RMS 1994 section 12 (from memory): tools grounded, power through ground-fault
# protection.
profile := {"safety": {"tools_grounded": {}}}

crew(fields) := {"safety": fields}

verdict(job) := v if v := lib.verdict(rule, "safety") with input as job with data.profile as profile

test_met if verdict(crew({"tools_grounded": true})) == "met"

test_deficient if verdict(crew({"tools_grounded": false})) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
