package policy.pipe.secured_at_penetrations_test

import data.policy.lib
import data.policy.pipe.secured_at_penetrations as rule
import rego.v2

# EPA RMS 1994 14.2.4 (from memory; inspection lists agree): secured above or
# below each penetration of floor, ceiling or roof.
profile := {"pipe": {"secured_at_penetrations": {"passes": {"any_of": ["floor", "ceiling", "roof"]}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

through(what, held) := segment(object.union({"run": "vertical", "penetrations": [object.union({"id": "n"}, what)]}, held))

test_met if verdict(through({"through": "roof"}, {"secured_at_penetrations": true})) == "met"

test_deficient if verdict(through({"through": "floor"}, {"secured_at_penetrations": false})) == "deficient"

test_unrecorded_at_a_floor if verdict(through({"through": "floor"}, {})) == "unrecorded"

test_unrecorded_when_the_hole_is_not_described if verdict(through({}, {"secured_at_penetrations": true})) == "unrecorded"

test_not_applicable_without_holes if verdict(segment({"run": "vertical", "penetrations": []})) == "not-applicable"

test_not_applicable_through_a_wall if verdict(through({"through": "exterior-wall"}, {})) == "not-applicable"

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
		["p", ["systems", 0, "pipe", 0, "penetrations"]],
		["p", ["systems", 0, "pipe", 0, "secured_at_penetrations"]],
	}
}

test_says_what_is_missing_of_a_hole if {
	some gap in rule.missing with input as through({}, {}) with data.profile as profile
	gap == ["p", ["systems", 0, "pipe", 0, "penetrations", 0, "through"]]
}
