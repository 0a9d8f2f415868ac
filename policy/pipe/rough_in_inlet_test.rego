package policy.pipe.rough_in_inlet_test

import data.policy.lib
import data.policy.pipe.rough_in_inlet as rule
import rego.v2

# National Building Code of Canada 9.13.4 (as quoted by another page): 100 mm of
# granular material at the inlet, airtight cap. New houses.
profile := {"pipe": {"rough_in_inlet": {"fill": {"si": 0.1}, "not_for": {"any_of": ["existing"]}}}}

stub(rough_in) := {
	"house": {"new_construction": true},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "rough-in", "rough_in": rough_in}],
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_a_hundred_millimetres if verdict(stub({"inlet_cover": {"si": 0.1}, "capped": true})) == "met"

test_deficient_with_less if verdict(stub({"inlet_cover": {"si": 0.09}, "capped": true})) == "deficient"

test_deficient_open if verdict(stub({"inlet_cover": {"si": 0.1}, "capped": false})) == "deficient"

test_unrecorded_whether_capped if verdict(stub({"inlet_cover": {"si": 0.1}})) == "unrecorded"

test_not_applicable_in_use if {
	verdict({"house": {"new_construction": true}, "systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"
}

test_not_applicable_to_old_houses if {
	verdict({"house": {"new_construction": false}, "systems": [{"id": "s", "kind": "sub-slab", "powered_by": "rough-in"}]}) == "not-applicable"
}

test_not_applicable_to_sealing if verdict({"systems": [{"id": "s", "kind": "sealing-only"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["house", "new_construction"]],
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "rough_in", "inlet_cover"]],
		["s", ["systems", 0, "rough_in", "capped"]],
	}
}
