package policy.special.combined_foundations_test

import data.policy.lib
import data.policy.special.combined_foundations as rule
import rego.v2

# IRC 2018 Appendix F AF103.10 and Illinois course text (both from memory): separate
# pipes for each foundation, or a continuous drain loop.
profile := {"special": {"combined_foundations": {
	"separate": {"any_of": ["slab-on-grade", "basement", "crawlspace", "earth-floor"]},
	"not_for": {"any_of": ["existing"]},
}}}

mixed := [{"id": "a", "kind": "basement"}, {"id": "b", "kind": "slab-on-grade"}]

job(foundations, part) := {
	"house": {"new_construction": true, "foundations": foundations},
	"systems": [{"id": "s", "kind": "sub-slab", "rough_in": part}],
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(job(mixed, {"combined_foundations_piped": true})) == "met"

test_deficient if verdict(job(mixed, {"combined_foundations_piped": false})) == "deficient"

test_unrecorded if verdict(job(mixed, {})) == "unrecorded"

test_unrecorded_kind_of_area if {
	verdict(job([{"id": "a", "kind": "basement"}, {"id": "b"}], {"combined_foundations_piped": true})) == "unrecorded"
}

test_unrecorded_areas if {
	verdict({"house": {"new_construction": true}, "systems": [{"id": "s", "kind": "sub-slab"}]}) == "unrecorded"
}

test_unrecorded_kind if {
	verdict({"house": {"new_construction": true, "foundations": mixed}, "systems": [{"id": "s"}]}) == "unrecorded"
}

test_unrecorded_age if {
	verdict({"house": {"foundations": mixed}, "systems": [{"id": "s", "kind": "sub-slab", "rough_in": {"combined_foundations_piped": true}}]}) == "unrecorded"
}

test_not_applicable_beside_a_garage if {
	verdict(job([{"id": "a", "kind": "basement"}, {"id": "b", "kind": "garage-slab"}], {})) == "not-applicable"
}

test_not_applicable_to_a_house_that_stands if {
	verdict({"house": {"new_construction": false, "foundations": mixed}, "systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"
}

test_not_applicable_to_ventilation if {
	verdict({"house": {"new_construction": true, "foundations": mixed}, "systems": [{"id": "s", "kind": "heat-recovery-ventilation"}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"house": {"foundations": [{"id": "a"}]}, "systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["house", "new_construction"]],
		["s", ["house", "foundations", 0, "kind"]],
		["s", ["systems", 0, "rough_in", "combined_foundations_piped"]],
	}
}

test_says_that_areas_are_missing if {
	got := rule.missing with data.profile as profile with input as {
		"house": {"new_construction": true},
		"systems": [{"id": "s", "kind": "sub-slab", "rough_in": {"combined_foundations_piped": true}}],
	}
	got == {["s", ["house", "foundations"]]}
}
