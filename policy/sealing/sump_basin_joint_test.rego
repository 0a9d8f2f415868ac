package policy.sealing.sump_basin_joint_test

import data.policy.lib
import data.policy.sealing.sump_basin_joint as rule
import rego.v2

# CCAH 2020 404.1.1: in new houses the joint between basin and slab is caulked,
# ASTM C920 class 25.
limits(not_for) := {"sealing": {"sump_basin_joint": {
	"classes": {"any_of": ["c920-class-25", "c920-class-50"]},
	"not_for": {"any_of": not_for},
}}}

pit(sealed, class) := {"house": {"new_construction": true}, "entry_routes": [{
	"id": "pit", "kind": "sump",
	"sump": {"basin_joint_sealed": sealed}, "sealant_standard": class,
}]}

verdict(job) := v if v := lib.verdict(rule, "pit") with input as job with data.profile as limits(["existing"])

test_met_with_class_25 if verdict(pit(true, "c920-class-25")) == "met"

test_deficient_when_not_sealed if verdict(pit(false, "c920-class-25")) == "deficient"

test_deficient_with_another_sealant if verdict(pit(true, "none")) == "deficient"

test_unrecorded_joint if {
	verdict({"house": {"new_construction": true}, "entry_routes": [{"id": "pit", "kind": "sump"}]}) == "unrecorded"
}

test_unrecorded_class if {
	verdict({
		"house": {"new_construction": true},
		"entry_routes": [{"id": "pit", "kind": "sump", "sump": {"basin_joint_sealed": true}}],
	}) == "unrecorded"
}

test_not_applicable_to_an_old_house if {
	verdict(object.union(pit(false, "none"), {"house": {"new_construction": false}})) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as limits(["existing"]) with input as {"entry_routes": [{"id": "pit", "kind": "sump"}, {"id": "r"}]}
	got == {
		["pit", ["house", "new_construction"]],
		["pit", ["entry_routes", 0, "sump", "basin_joint_sealed"]],
		["pit", ["entry_routes", 0, "sealant_standard"]],
		["r", ["house", "new_construction"]],
		["r", ["entry_routes", 1, "kind"]],
	}
}
