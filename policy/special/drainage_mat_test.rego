package policy.special.drainage_mat_test

import data.policy.lib
import data.policy.special.drainage_mat as rule
import rego.v2

# 32 Ill. Adm. Code 422.160(b)(2): section 12 sq in or more, 12 to 18 in from the wall.
profile := {"special": {"drainage_mat": {"kinds": {"any_of": ["sub-slab", "drain-tile"]}, "not_for": {"any_of": ["existing"]}, "section": {"si": 0.00774192}, "nearest": {"si": 0.3048}, "farthest": {"si": 0.4572}}}}

made(parts) := {"house": {"new_construction": true}, "systems": [object.union({"id": "s", "kind": "sub-slab"}, parts)]}

full := {"rough_in": {"mat_section": {"si": 0.00774192}, "mat_wall_distance": {"si": 0.4572}, "layer": "sand-and-mat"}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_the_limit if verdict(made(full)) == "met"

test_deficient_section if verdict(made(object.union(full, {"rough_in": {"mat_section": {"si": 0.007}}}))) == "deficient"

test_deficient_nearest if verdict(made(object.union(full, {"rough_in": {"mat_wall_distance": {"si": 0.3}}}))) == "deficient"

test_deficient_farthest if verdict(made(object.union(full, {"rough_in": {"mat_wall_distance": {"si": 0.46}}}))) == "deficient"

test_unrecorded_mat_section if verdict(made(json.remove(full, ["rough_in/mat_section"]))) == "unrecorded"

test_unrecorded_mat_wall_distance if verdict(made(json.remove(full, ["rough_in/mat_wall_distance"]))) == "unrecorded"

test_unrecorded_kind if verdict({"house": {"new_construction": true}, "systems": [object.union({"id": "s"}, full)]}) == "unrecorded"

test_not_applicable_to_other_systems if verdict({"house": {"new_construction": true}, "systems": [{"id": "s", "kind": "baseboard-channel"}]}) == "not-applicable"

test_not_applicable_to_a_house_that_stands if verdict(object.union(made({}), {"house": {"new_construction": false}})) == "not-applicable"

test_unrecorded_house if verdict(object.remove(made(full), ["house"])) == "unrecorded"

test_not_applicable_with_another_layer if verdict(made({"rough_in": {"layer": "aggregate"}})) == "not-applicable"

test_unrecorded_layer if verdict(made(json.remove(full, ["rough_in/layer"]))) == "unrecorded"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["house", "new_construction"]],
		["s", ["systems", 0, "rough_in", "layer"]],
		["s", ["systems", 0, "rough_in", "mat_section"]],
		["s", ["systems", 0, "rough_in", "mat_wall_distance"]],
	}
}
