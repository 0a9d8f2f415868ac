package policy.pipe.rough_in_size_test

import data.policy.lib
import data.policy.pipe.rough_in_size as rule
import rego.v2

# ANSI/AARST RRNC 2020 Table 302.3: 3 in up to 2,500 sq ft, 4 in up to
# 4,500 sq ft a system. New houses.
profile := {"pipe": {"rough_in_size": {
	"small_size": {"si": 0.0762}, "small_area": {"si": 232.2576},
	"large_size": {"si": 0.1016}, "large_area": {"si": 418.06368},
	"not_for": {"any_of": ["existing"]},
}}}

house(size, area) := {
	"house": {"new_construction": true},
	"systems": [{"id": "s", "kind": "sub-slab", "rough_in": {"foundation_area": area}}],
	"derived": {"systems": [{"id": "s", "at": "/systems/0", "smallest_bore": size}]},
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_three_inches_met_at_exactly_2500_sq_ft if verdict(house({"si": 0.0762}, {"si": 232.2576})) == "met"

test_three_inches_deficient_above if verdict(house({"si": 0.0762}, {"si": 232.3})) == "deficient"

test_four_inches_met_at_exactly_4500_sq_ft if verdict(house({"si": 0.1016}, {"si": 418.06368})) == "met"

test_four_inches_deficient_above if verdict(house({"si": 0.1016}, {"si": 418.1})) == "deficient"

test_two_inches_never if verdict(house({"si": 0.0508}, {"si": 100})) == "deficient"

test_undetermined_beyond_the_table if verdict(house({"si": 0.1524}, {"si": 500})) == "undetermined"

test_unrecorded_without_area if verdict(house({"si": 0.1016}, {})) == "unrecorded"

test_unrecorded_without_size if verdict(house({"undetermined": ["/systems/0/pipe"]}, {"si": 100})) == "unrecorded"

test_not_applicable_to_ventilation if {
	verdict({"house": {"new_construction": true}, "systems": [{"id": "s", "kind": "heat-recovery-ventilation"}]}) == "not-applicable"
}

test_not_applicable_to_old_houses if {
	verdict({"house": {"new_construction": false}, "systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"
}

test_unrecorded_when_the_age_is_not_said if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "rough_in": {"foundation_area": {"si": 100}}}]}) == "unrecorded"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {"house": {"new_construction": true}} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "derived": {"systems": [{"id": "s", "at": "/systems/0"}]}} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["house", "new_construction"]],
		["s", ["derived", "systems", 0, "smallest_bore"]],
		["s", ["systems", 0, "rough_in", "foundation_area"]],
	}
}
