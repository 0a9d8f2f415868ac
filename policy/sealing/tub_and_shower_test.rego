package policy.sealing.tub_and_shower_test

import data.policy.lib
import data.policy.sealing.tub_and_shower as rule
import rego.v2

# EPA RMS 1994 15.6 (from memory): plumbing rough-ins and large holes are filled
# with non-shrink mortar or grout, expanding foam or the like. IRC 2018 AF103.4.1:
# openings round tubs and pipes, polyurethane caulk or equal. That a sealant of
# ASTM C920 class 25 or better is an equal is our reading.
profile := {"sealing": {"tub_and_shower": {
	"materials": {"any_of": ["non-shrink-grout", "mortar", "expanding-foam"]},
	"equals": {"any_of": ["c920-class-25", "c920-class-50"]},
}}}

opening(fields) := {"entry_routes": [object.union({"id": "r", "kind": "tub-opening", "treatment": "sealed"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "r") with input as job with data.profile as profile

test_met if verdict(opening({"material": "expanding-foam"})) == "met"

test_met_under_a_shower if verdict(opening({"kind": "shower-opening", "material": "mortar"})) == "met"

test_met_with_an_equal if verdict(opening({"material": "silicone", "sealant_standard": "c920-class-25"})) == "met"

test_deficient_with_another_material if {
	verdict(opening({"material": "silicone", "sealant_standard": "none"})) == "deficient"
}

test_deficient_when_left_open if verdict(opening({"treatment": "left-open"})) == "deficient"

test_unrecorded if verdict(opening({})) == "unrecorded"

test_unrecorded_whether_equal if verdict(opening({"material": "silicone"})) == "unrecorded"

test_unrecorded_treatment if {
	verdict({"entry_routes": [{"id": "r", "kind": "tub-opening", "material": "expanding-foam"}]}) == "unrecorded"
}

test_not_applicable_out_of_reach if verdict(opening({"treatment": "not-reachable"})) == "not-applicable"

# A list of entry routes without them says that none was found open.
test_no_subject_when_none_was_found if {
	got := rule.subjects with input as {"entry_routes": [{"id": "x", "kind": "sump"}]}
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
		{"id": "a", "kind": "tub-opening"},
		{"id": "b", "kind": "tub-opening", "treatment": "sealed", "material": "silicone"},
	]}
	got == {
		["a", ["entry_routes", 0, "treatment"]],
		["a", ["entry_routes", 0, "material"]],
		["b", ["entry_routes", 1, "sealant_standard"]],
	}
}
