package policy.special.rough_in_for_each_area_test

import data.policy.lib
import data.policy.special.rough_in_for_each_area as rule
import rego.v2

# RRNC 2020 302.1 and its exception 1: a rough-in in new houses; garage slabs with no
# living space above need none.
profile := {"special": {"rough_in_for_each_area": {
	"kinds": {"any_of": ["basement", "slab-on-grade", "garage-slab"]},
	"not_for": {"any_of": ["existing"]},
}}}

house(area, above, systems) := {
	"house": {"new_construction": true, "foundations": [area], "garage": {"living_space_above": above}},
	"systems": systems,
}

basement := {"id": "f", "kind": "basement"}

garage := {"id": "f", "kind": "garage-slab"}

pipe := {"id": "s", "kind": "sub-slab", "foundations": ["f"]}

elsewhere := {"id": "s", "kind": "sub-slab", "foundations": ["g"]}

verdict(job) := v if v := lib.verdict(rule, "f") with input as job with data.profile as profile

test_met if verdict(house(basement, false, [pipe])) == "met"

test_deficient if verdict(house(basement, false, [elsewhere])) == "deficient"

test_deficient_without_systems if verdict(house(basement, false, [])) == "deficient"

test_deficient_ventilation_is_no_rough_in if {
	verdict(house(basement, false, [{"id": "s", "kind": "heat-recovery-ventilation", "foundations": ["f"]}])) == "deficient"
}

test_deficient_garage_below_rooms if verdict(house(garage, true, [])) == "deficient"

test_not_applicable_to_a_garage_without_rooms_above if verdict(house(garage, false, [])) == "not-applicable"

test_not_applicable_to_a_crawlspace if verdict(house({"id": "f", "kind": "crawlspace"}, false, [])) == "not-applicable"

test_not_applicable_to_a_house_that_stands if {
	verdict({"house": {"new_construction": false, "foundations": [basement]}, "systems": []}) == "not-applicable"
}

test_unrecorded_age if verdict({"house": {"foundations": [basement]}, "systems": [pipe]}) == "unrecorded"

test_unrecorded_rooms_above if {
	verdict({"house": {"new_construction": true, "foundations": [garage]}, "systems": [pipe]}) == "unrecorded"
}

test_unrecorded_kind if verdict(house({"id": "f"}, false, [pipe])) == "unrecorded"

test_unrecorded_systems if verdict({"house": {"new_construction": true, "foundations": [basement]}}) == "unrecorded"

test_unrecorded_kind_of_system if verdict(house(basement, false, [{"id": "s", "foundations": ["f"]}])) == "unrecorded"

test_unrecorded_areas_of_a_system if verdict(house(basement, false, [{"id": "s", "kind": "sub-slab"}])) == "unrecorded"

test_unrecorded_foundations if {
	"unrecorded" == lib.verdict(rule, "house") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {
		"house": {"foundations": [{"id": "f"}, {"id": "g", "kind": "garage-slab"}]},
		"systems": [{"id": "s"}, {"id": "t", "kind": "sub-slab", "foundations": ["g"]}],
	}
	got == {
		["f", ["house", "new_construction"]],
		["g", ["house", "new_construction"]],
		["f", ["house", "foundations", 0, "kind"]],
		["g", ["house", "garage", "living_space_above"]],
		["f", ["systems", 0, "kind"]],
		["f", ["systems", 0, "foundations"]],
	}
}

test_says_that_systems_are_missing if {
	got := rule.missing with data.profile as profile with input as {"house": {"new_construction": true, "foundations": [basement]}}
	got == {["f", ["systems"]]}
}

test_says_that_foundations_are_missing if {
	got := rule.missing with data.profile as profile with input as {"house": {"new_construction": true}}
	got == {["house", ["house", "foundations"]]}
}
