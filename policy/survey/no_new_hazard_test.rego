package policy.survey.no_new_hazard_test

import data.policy.lib
import data.policy.survey.no_new_hazard as rule
import rego.v2

# EPA RMS 1994 13.2, 13.3 (from memory); SGM-SF 2017 (12/20) 5.1.
job(answer) := {"systems": [object.union({"id": "s"}, {"new_hazard_created": answer})]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job

test_met if verdict(job(false)) == "met"

test_deficient if verdict(job(true)) == "deficient"

test_unrecorded if verdict({"systems": [{"id": "s"}]}) == "unrecorded"

test_unrecorded_without_systems if "unrecorded" == lib.verdict(rule, "systems") with input as {}
