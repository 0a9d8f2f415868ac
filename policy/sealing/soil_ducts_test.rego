package policy.sealing.soil_ducts_test

import data.policy.lib
import data.policy.sealing.soil_ducts as rule
import rego.v2

# CCAH 2020 404.1.4 and IRC 2018 AF103.4.8 (from memory): ducts on the soil side in
# new houses are sealed.
profile := {"sealing": {"soil_ducts": {"ducts": {"any_of": ["none", "sealed"]}, "not_for": {"any_of": ["existing"]}}}}

house(new, ducts) := {"house": {"new_construction": new, "air_handling": {"ducts_in_soil": ducts}}}

verdict(job) := v if v := lib.verdict(rule, "house") with input as job with data.profile as profile

test_met_without_such_ducts if verdict(house(true, "none")) == "met"

test_met if verdict(house(true, "sealed")) == "met"

test_deficient if verdict(house(true, "unsealed")) == "deficient"

test_unrecorded if verdict({"house": {"new_construction": true}}) == "unrecorded"

test_unrecorded_age if verdict({"house": {"air_handling": {"ducts_in_soil": "none"}}}) == "unrecorded"

test_not_applicable_to_an_old_house if verdict(house(false, "unsealed")) == "not-applicable"

test_says_what_is_missing if {
	got := rule.missing with input as {} with data.profile as profile
	got == {
		["house", ["house", "new_construction"]],
		["house", ["house", "air_handling", "ducts_in_soil"]],
	}
}
