package policy.sealing.floor_water_test

import data.policy.lib
import data.policy.sealing.floor_water as rule
import rego.v2

# RMS-LB 2018 (12/20) 7.5.2: where the sealed pit was the only relief for surface
# water, another drain is fitted. EPA RMS 1994 14.5.1 and 14.7.4 (from memory):
# a trapped one. IRC 2018 AF103.4.4: the lid of a pit that serves as floor drain
# has a trapped inlet.
profile := {"sealing": {"floor_water": {"drains": {"any_of": ["trapped-drain-in-lid", "trapped-floor-drain"]}}}}

pit(fields) := {"entry_routes": [{"id": "pit", "kind": "sump", "treatment": "covered-and-sealed", "sump": fields}]}

verdict(job) := v if v := lib.verdict(rule, "pit") with input as job with data.profile as profile

test_met_with_a_trapped_drain_in_the_lid if {
	verdict(pit({"only_surface_drain": true, "alternative_drain": "trapped-drain-in-lid"})) == "met"
}

# Worked case 29: the sump of a basement was the only surface drain, is now
# sealed, and there is no trapped drain. EPA RMS 1994 14.5.1 and 14.7.4, RMS-LB
# 2018 (12/20) 7.5.2: fails.
test_deficient_without_another_drain if {
	verdict(pit({"only_surface_drain": true, "alternative_drain": "none"})) == "deficient"
}

test_undetermined_with_an_unknown_drain if {
	verdict(pit({"only_surface_drain": true, "alternative_drain": "other"})) == "undetermined"
}

test_unrecorded if verdict(pit({"only_surface_drain": true})) == "unrecorded"

test_unrecorded_whether_the_only_one if verdict(pit({"alternative_drain": "none"})) == "unrecorded"

test_not_applicable_where_water_goes_elsewhere if {
	verdict(pit({"only_surface_drain": false})) == "not-applicable"
}

test_not_applicable_to_an_open_pit if {
	verdict({"entry_routes": [{"id": "pit", "kind": "sump", "treatment": "left-open"}]}) == "not-applicable"
}

test_unrecorded_without_entry_routes if {
	"unrecorded" == lib.verdict(rule, "entry_routes") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"entry_routes": [{"id": "pit", "kind": "sump"}]}
	got == {
		["pit", ["entry_routes", 0, "treatment"]],
		["pit", ["entry_routes", 0, "sump", "only_surface_drain"]],
		["pit", ["entry_routes", 0, "sump", "alternative_drain"]],
	}
}
