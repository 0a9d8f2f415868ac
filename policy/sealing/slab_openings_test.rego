package policy.sealing.slab_openings_test

import data.policy.lib
import data.policy.sealing.slab_openings as rule
import rego.v2

# EPA RMS 1994 15.6 (from memory): large holes are filled with non-shrink mortar or
# grout, expanding foam or the like. IRC 2018 AF103.4.1: openings round pipes and
# other holes in the slab, polyurethane caulk or equal. That a sealant of ASTM
# C920 class 25 or better is an equal is our reading.
profile := {"sealing": {"slab_openings": {
	"kinds": {"any_of": ["slab-opening"]},
	"materials": {"any_of": ["non-shrink-grout", "mortar", "expanding-foam"]},
	"equals": {"any_of": ["c920-class-25", "c920-class-50"]},
}}}

opening(fields) := {"entry_routes": [object.union({"id": "r", "kind": "slab-opening", "treatment": "sealed"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "r") with input as job with data.profile as profile

test_met if verdict(opening({"material": "non-shrink-grout"})) == "met"

test_met_with_an_equal if verdict(opening({"material": "tape", "sealant_standard": "c920-class-25"})) == "met"

test_deficient_with_another_material if {
	verdict(opening({"material": "tape", "sealant_standard": "none"})) == "deficient"
}

test_deficient_when_left_open if verdict(opening({"treatment": "left-open"})) == "deficient"

test_unrecorded if verdict(opening({})) == "unrecorded"

test_unrecorded_whether_equal if verdict(opening({"material": "tape"})) == "unrecorded"

test_unrecorded_treatment if {
	verdict({"entry_routes": [{"id": "r", "kind": "slab-opening", "material": "non-shrink-grout"}]}) == "unrecorded"
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
		{"id": "a", "kind": "slab-opening"},
		{"id": "b", "kind": "slab-opening", "treatment": "sealed", "material": "tape"},
	]}
	got == {
		["a", ["entry_routes", 0, "treatment"]],
		["a", ["entry_routes", 0, "material"]],
		["b", ["entry_routes", 1, "sealant_standard"]],
	}
}
