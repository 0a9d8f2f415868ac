package policy.exhaust.clear_of_higher_wall_test

import data.policy.exhaust.clear_of_higher_wall as rule
import data.policy.lib
import rego.v2

# 25 Pa. Code 240.308(b)(5): 5 ft level distance from a wall that rises above the
# roof, or an end above that wall.
profile := {"exhaust": {"clear_of_higher_wall": {"minimum": {"si": 1.524}, "not_for": {"any_of": ["rough-in"]}}}}

through(rises, distance) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "passive",
	"discharge": {"mounting": "through-roof", "wall_rises_above": rises, "distance_to_higher_wall": distance},
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_five_feet if verdict(through(true, {"si": 1.524})) == "met"

test_met_where_no_wall_is_higher if verdict(through(false, {})) == "met"

test_deficient_at_four_feet if verdict(through(true, {"si": 1.2192})) == "deficient"

test_unrecorded if verdict(through(true, {})) == "unrecorded"

test_not_applicable_on_a_wall if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": {"mounting": "exterior-wall"}}]}) == "not-applicable"

test_not_applicable_when_only_roughed_in if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "rough-in"}]}) == "not-applicable"

test_not_applicable_to_ventilation if verdict({"systems": [{"id": "s", "kind": "heat-recovery-ventilation", "powered_by": "fan"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "discharge", "mounting"]],
		["s", ["systems", 0, "discharge", "wall_rises_above"]],
		["s", ["systems", 0, "discharge", "distance_to_higher_wall"]],
	}
}
