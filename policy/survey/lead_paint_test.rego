package policy.survey.lead_paint_test

import data.policy.lib
import data.policy.survey.lead_paint as rule
import rego.v2

# SGM-SF 2017 (12/20) 11.2.4.1, 40 CFR 745 subpart E: housing from before 1978.
profile := {"survey": {"lead_paint": {"built_before": {"si": 1978}}}}

job(paint) := {"house": {"year_built": 1960, "hazards": [object.union({"id": "h", "kind": "lead-paint"}, paint)]}}

verdict(job) := v if v := lib.verdict(rule, "house") with input as job with data.profile as profile

test_met_when_ruled_out if verdict(job({"state": "ruled-out"})) == "met"

test_met_when_left_alone if verdict(job({"state": "suspected", "disturbed_by_work": false})) == "met"

cleared(answer) := job({"state": "confirmed", "disturbed_by_work": true, "cleared_by_accredited": answer})

test_met_with_an_accredited_person if verdict(cleared(true)) == "met"

test_deficient_without_one if verdict(cleared(false)) == "deficient"

test_deficient_when_nobody_looked if verdict({"house": {"year_built": 1977, "hazards": []}}) == "deficient"

test_not_applicable_from_1978 if verdict({"house": {"year_built": 1978, "hazards": []}}) == "not-applicable"

test_unrecorded_without_the_year if verdict({"house": {"hazards": []}}) == "unrecorded"

test_unrecorded_when_it_is_not_said_if_the_work_touches_it if verdict(job({"state": "suspected"})) == "unrecorded"

test_a_hazard_without_its_kind_may_be_paint if {
	verdict({"house": {"year_built": 1960, "hazards": [{"id": "h"}]}}) == "unrecorded"
}

test_says_what_is_missing if {
	none := rule.missing with input as {} with data.profile as profile
	none == {["house", ["house", "year_built"]], ["house", ["house", "hazards"]]}
	paint := rule.missing with input as {"house": {"year_built": 1960, "hazards": [{"id": "g"}, {"id": "h", "kind": "lead-paint"}]}}
		with data.profile as profile
	paint == {
		["house", ["house", "hazards", 0, "kind"]],
		["house", ["house", "hazards", 1, "state"]],
		["house", ["house", "hazards", 1, "disturbed_by_work"]],
		["house", ["house", "hazards", 1, "cleared_by_accredited"]],
	}
}
