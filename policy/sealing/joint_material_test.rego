package policy.sealing.joint_material_test

import data.policy.lib
import data.policy.sealing.joint_material as rule
import rego.v2

# EPA RMS 1994 14.5.4 (from memory): joint between floor and wall, perimeter
# channel and cracks, sealed with urethane. IRC 2018 AF103.4.2: joints sealed with
# polyurethane caulk or equal.
profile := {"sealing": {"joint_material": {
	"kinds": {"any_of": ["wall-floor-joint", "perimeter-channel", "crack"]},
	"materials": {"any_of": ["urethane-caulk"]},
	"equals": {"any_of": ["c920-class-25", "c920-class-50"]},
}}}

opening(fields) := {"entry_routes": [object.union({"id": "r", "kind": "wall-floor-joint", "treatment": "sealed"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "r") with input as job with data.profile as profile

test_met if verdict(opening({"material": "urethane-caulk"})) == "met"

test_met_with_an_equal if verdict(opening({"material": "silicone", "sealant_standard": "c920-class-25"})) == "met"

test_deficient_with_another_material if {
	verdict(opening({"material": "silicone", "sealant_standard": "none"})) == "deficient"
}

test_deficient_when_left_open if verdict(opening({"treatment": "left-open"})) == "deficient"

test_unrecorded if verdict(opening({})) == "unrecorded"

test_unrecorded_whether_equal if verdict(opening({"material": "silicone"})) == "unrecorded"

test_unrecorded_treatment if {
	verdict({"entry_routes": [{"id": "r", "kind": "wall-floor-joint", "material": "urethane-caulk"}]}) == "unrecorded"
}

test_not_applicable_out_of_reach if verdict(opening({"treatment": "not-reachable"})) == "not-applicable"

test_other_openings_are_no_subject if {
	got := rule.subjects with input as {"entry_routes": [{"id": "x", "kind": "sump"}]} with data.profile as profile
	count(got) == 0
}

test_unrecorded_kind if {
	"unrecorded" == lib.verdict(rule, "x") with input as {"entry_routes": [{"id": "x"}]} with data.profile as profile
}

test_unrecorded_without_entry_routes if {
	"unrecorded" == lib.verdict(rule, "entry_routes") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {"entry_routes": [
		{"id": "a", "kind": "wall-floor-joint"},
		{"id": "b", "kind": "wall-floor-joint", "treatment": "sealed", "material": "silicone"},
	]}
	got == {
		["a", ["entry_routes", 0, "treatment"]],
		["a", ["entry_routes", 0, "material"]],
		["b", ["entry_routes", 1, "sealant_standard"]],
	}
}
