package policy.pipe.vertical_supports_test

import data.policy.lib
import data.policy.pipe.vertical_supports as rule
import rego.v2

# EPA RMS 1994 14.2.4 (from memory; inspection lists agree): 8 ft where the run
# passes no floor, ceiling or roof. IRC 2018 Table P2605.1 (from memory): 10 ft.
profile := {"pipe": {"vertical_supports": {"maximum": {"si": 2.4384}, "passes": {"any_of": ["floor", "ceiling", "roof"]}}}}

plumbing := {"pipe": {"vertical_supports": {"maximum": {"si": 3.048}, "passes": {"any_of": []}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

upright(spacing, holes) := segment(object.union({"run": "vertical", "support_spacing": {"si": spacing}}, holes))

test_met_at_exactly_eight_feet if verdict(upright(2.4384, {"penetrations": []})) == "met"

test_deficient_farther_apart if verdict(upright(2.44, {"penetrations": [{"id": "n", "through": "exterior-wall"}]})) == "deficient"

test_not_applicable_through_a_floor if verdict(upright(3, {"penetrations": [{"id": "n", "through": "floor"}]})) == "not-applicable"

test_unrecorded_without_a_list_of_holes if verdict(upright(2, {})) == "unrecorded"

test_unrecorded_when_a_hole_is_not_described if verdict(upright(2, {"penetrations": [{"id": "n"}]})) == "unrecorded"

test_met_at_exactly_ten_feet_by_the_plumbing_table if {
	"met" == lib.verdict(rule, "p") with input as upright(3.048, {}) with data.profile as plumbing
}

test_not_applicable_to_level_pipe if verdict(segment({"run": "horizontal"})) == "not-applicable"

test_unrecorded if verdict(segment({})) == "unrecorded"

test_not_applicable_below_the_slab if verdict(segment({"above_ground": false})) == "not-applicable"

test_unrecorded_without_a_list_of_pipe if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab"}]} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "pipe": [{"id": "p"}]}]} with data.profile as profile
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "pipe", 0, "above_ground"]],
		["p", ["systems", 0, "pipe", 0, "run"]],
		["p", ["systems", 0, "pipe", 0, "support_spacing"]],
		["p", ["systems", 0, "pipe", 0, "penetrations"]],
	}
}

test_says_what_is_missing_of_a_hole if {
	some gap in rule.missing with input as upright(2, {"penetrations": [{"id": "n"}]}) with data.profile as profile
	gap == ["p", ["systems", 0, "pipe", 0, "penetrations", 0, "through"]]
}
