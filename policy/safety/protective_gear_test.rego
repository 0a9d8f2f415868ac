package policy.safety.protective_gear_test

import data.policy.lib
import data.policy.safety.protective_gear as rule
import rego.v2

# EPA RMS 1994 section 12 (from memory): hard hat, face and ear protection and
# gloves are at hand for drilling and cutting.
profile := {"safety": {"protective_gear": {}}}

crew(fields) := {"safety": fields}

verdict(job) := v if v := lib.verdict(rule, "safety") with input as job with data.profile as profile

test_met if verdict(crew({"protective_gear": true})) == "met"

test_deficient if verdict(crew({"protective_gear": false})) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"
