package policy.survey.unsafe_told_test

import data.policy.lib
import data.policy.survey.unsafe_told as rule
import rego.v2

# SGM-SF 2017 (12/20) 5.4.3.1: prompt written notice of unsafe conditions.
job(hazard) := {"house": {"hazards": [object.union({"id": "h", "kind": "wiring", "state": "confirmed"}, hazard)]}}

verdict(job) := v if v := lib.verdict(rule, "h") with input as job

test_met if verdict(job({"client_told": true})) == "met"

test_deficient if verdict(job({"client_told": false})) == "deficient"

test_not_applicable_when_ruled_out if verdict(job({"state": "ruled-out", "client_told": false})) == "not-applicable"

test_unrecorded if verdict(job({})) == "unrecorded"

test_unrecorded_without_the_state if verdict({"house": {"hazards": [{"id": "h", "client_told": true}]}}) == "unrecorded"

test_unrecorded_without_a_list if "unrecorded" == lib.verdict(rule, "house") with input as {}

test_says_what_is_missing if {
	got := rule.missing with input as {"house": {"hazards": [{"id": "h"}]}}
	got == {
		["h", ["house", "hazards", 0, "state"]],
		["h", ["house", "hazards", 0, "client_told"]],
	}
}
