package policy.safety.aired_or_respirators_test

import data.policy.lib
import data.policy.safety.aired_or_respirators as rule
import rego.v2

# EPA RMS 1994 section 12 (from memory): air the work area, or use respirators where
# that is not possible.
profile := {"safety": {"aired_or_respirators": {}}}

crew(fields) := {"safety": fields}

verdict(job) := v if v := lib.verdict(rule, "safety") with input as job with data.profile as profile

test_met_when_aired if verdict(crew({"work_area_ventilated": true})) == "met"

test_met_with_respirators if verdict(crew({"work_area_ventilated": false, "respirators_used": true})) == "met"

test_deficient if verdict(crew({"work_area_ventilated": false, "respirators_used": false})) == "deficient"

test_unrecorded if verdict(crew({})) == "unrecorded"

test_unrecorded_respirators if verdict(crew({"work_area_ventilated": false})) == "unrecorded"

test_says_what_is_missing if {
	none := rule.missing with input as {}
	none == {["safety", ["safety", "work_area_ventilated"]]}
	closed := rule.missing with input as crew({"work_area_ventilated": false})
	closed == {["safety", ["safety", "respirators_used"]]}
}
