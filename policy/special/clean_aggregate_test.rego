package policy.special.clean_aggregate_test

import data.policy.lib
import data.policy.special.clean_aggregate as rule
import rego.v2

# 32 Ill. Adm. Code 422.160(b)(1): passes 2 in, stays on 1/4 in. IRC 2018 Appendix F AF103.2 (from memory): the same.
profile := {"special": {"clean_aggregate": {"kinds": {"any_of": ["sub-slab", "drain-tile"]}, "not_for": {"any_of": ["existing"]}}}}

made(parts) := {"house": {"new_construction": true}, "systems": [object.union({"id": "s", "kind": "sub-slab"}, parts)]}

full := {"rough_in": {"aggregate_clean": true, "layer": "aggregate"}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(made(full)) == "met"

test_deficient_aggregate_clean if verdict(made(object.union(full, {"rough_in": {"aggregate_clean": false}}))) == "deficient"

test_unrecorded_aggregate_clean if verdict(made(json.remove(full, ["rough_in/aggregate_clean"]))) == "unrecorded"

test_unrecorded_kind if verdict({"house": {"new_construction": true}, "systems": [object.union({"id": "s"}, full)]}) == "unrecorded"

test_not_applicable_to_other_systems if verdict({"house": {"new_construction": true}, "systems": [{"id": "s", "kind": "baseboard-channel"}]}) == "not-applicable"

test_not_applicable_to_a_house_that_stands if verdict(object.union(made({}), {"house": {"new_construction": false}})) == "not-applicable"

test_unrecorded_house if verdict(object.remove(made(full), ["house"])) == "unrecorded"

test_not_applicable_with_another_layer if verdict(made({"rough_in": {"layer": "sand-and-mat"}})) == "not-applicable"

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
		["s", ["systems", 0, "rough_in", "aggregate_clean"]],
	}
}
