package policy.membrane.thickness_test

import data.policy.lib
import data.policy.membrane.thickness as rule
import rego.v2

# EPA RMS 1994 15.9 (from memory) and 32 Ill. Adm. Code 422.160(c): 6 mil
# polyethylene or 3 mil cross-laminated. A state weatherization field guide: the
# same.
profile := {"membrane": {"thickness": {"plain": {"si": 0.0001524}, "cross_laminated": {"si": 0.0000762}}}}

sheet(material, thickness) := {"systems": [{
	"id": "s", "kind": "sub-membrane",
	"membrane": {"material": material, "thickness": {"si": thickness}},
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_six_mil if verdict(sheet("polyethylene", 0.0001524)) == "met"

test_met_at_exactly_three_mil if verdict(sheet("cross-laminated", 0.0000762)) == "met"

test_deficient_below_three_mil if verdict(sheet("cross-laminated", 0.000076)) == "deficient"

# Worked case 27, EPA RMS 1994 15.9: 4 mil plain sheet fails, 4 mil cross-laminated
# passes, 6 mil passes.
test_worked_case_27 if {
	verdict(sheet("polyethylene", 0.0001016)) == "deficient"
	verdict(sheet("cross-laminated", 0.0001016)) == "met"
	verdict(sheet("polyethylene", 0.0001524)) == "met"
}

# IRC 2018 AF103.5.2: 6 mil, whatever the sheet.
test_one_thickness_for_every_sheet if {
	irc := {"membrane": {"thickness": {"plain": {"si": 0.0001524}, "cross_laminated": {"si": 0.0001524}}}}
	"deficient" == lib.verdict(rule, "s") with input as sheet("cross-laminated", 0.0001016) with data.profile as irc
}

test_undetermined_with_another_material if verdict(sheet("other", 0.0001524)) == "undetermined"

test_unrecorded if {
	verdict({"systems": [{"id": "s", "kind": "sub-membrane", "membrane": {"material": "polyethylene"}}]}) == "unrecorded"
}

test_unrecorded_material if {
	verdict({"systems": [{"id": "s", "kind": "sub-membrane", "membrane": {"thickness": {"si": 0.0001524}}}]}) == "unrecorded"
}

test_not_applicable_without_a_membrane if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "membrane", "material"]],
		["s", ["systems", 0, "membrane", "thickness"]],
	}
}
