package policy.survey.asbestos_cleared_test

import data.policy.lib
import data.policy.survey.asbestos_cleared as rule
import rego.v2

# SGM-SF 2017 CG 11.2.3 (companion guidance); EPA RMS 1994 section 12 (from memory).
touched := {"id": "h", "kind": "asbestos", "state": "suspected", "disturbed_by_work": true, "cleared_by_accredited": true}

verdict(hazard) := v if v := lib.verdict(rule, "h") with input as {"house": {"hazards": [hazard]}}

test_met if verdict(touched) == "met"

test_deficient if verdict(object.union(touched, {"cleared_by_accredited": false})) == "deficient"

test_unrecorded if verdict(object.remove(touched, ["cleared_by_accredited"])) == "unrecorded"

test_unrecorded_when_it_is_not_said_if_the_work_touches_it if {
	verdict(object.remove(touched, ["disturbed_by_work"])) == "unrecorded"
}

test_not_applicable_when_left_alone if verdict(object.union(touched, {"disturbed_by_work": false})) == "not-applicable"

test_not_applicable_when_ruled_out if verdict(object.union(touched, {"state": "ruled-out"})) == "not-applicable"

test_not_applicable_to_other_hazards if verdict(object.union(touched, {"kind": "mold"})) == "not-applicable"

test_unrecorded_without_a_list if "unrecorded" == lib.verdict(rule, "house") with input as {}

test_says_what_is_missing if {
	got := rule.missing with input as {"house": {"hazards": [{"id": "h"}]}}
	got == {
		["h", ["house", "hazards", 0, "kind"]],
		["h", ["house", "hazards", 0, "state"]],
		["h", ["house", "hazards", 0, "disturbed_by_work"]],
		["h", ["house", "hazards", 0, "cleared_by_accredited"]],
	}
}
