package policy.suction.perforated_length_test

import data.policy.lib
import data.policy.suction.perforated_length as rule
import rego.v2

# ANSI/AARST RMS-LB 2018 (12/20) 6.1.3, advice: 3 ft of perforated pipe, 10 ft
# where the membrane may stick to wet soil.
profile := {"suction": {"perforated_length": {"usual": {"si": 0.9144}, "wet": {"si": 3.048}}}}

point(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab",
	"suction_points": [object.union({"id": "p"}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

inlet(length, wet) := point({"through": "membrane", "perforated_length": {"si": length}, "membrane_may_stick": wet})

test_met_at_exactly_three_feet if verdict(inlet(0.9144, false)) == "met"

test_deficient_shorter if verdict(inlet(0.9, false)) == "deficient"

test_deficient_at_three_feet_on_wet_soil if verdict(inlet(0.9144, true)) == "deficient"

test_met_at_exactly_ten_feet_on_wet_soil if verdict(inlet(3.048, true)) == "met"

test_unrecorded_whether_it_is_wet if verdict(point({"through": "membrane", "perforated_length": {"si": 1}})) == "unrecorded"

test_not_applicable_in_a_slab if verdict(point({"through": "slab"})) == "not-applicable"

test_unrecorded if verdict(point({})) == "unrecorded"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab"}]} with data.profile as profile
}

test_not_applicable_to_pressurization if {
	verdict({"systems": [{"id": "s", "kind": "pressurization", "suction_points": [{"id": "p"}]}]}) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "suction_points": [{"id": "p"}]}]} with data.profile as profile
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "suction_points", 0, "through"]],
		["p", ["systems", 0, "suction_points", 0, "membrane_may_stick"]],
		["p", ["systems", 0, "suction_points", 0, "perforated_length"]],
	}
}
