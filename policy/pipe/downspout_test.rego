package policy.pipe.downspout_test

import data.policy.lib
import data.policy.pipe.downspout as rule
import rego.v2

# An inspection list (no source: common practice): outdoors a metal downspout of
# 3 in x 4 in may stand in.
profile := {"pipe": {"downspout": {"shapes": {"any_of": ["downspout-3x4"]}, "places": {"any_of": ["exterior"]}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

test_met if verdict(segment({"shape": "downspout-3x4", "place": "exterior"})) == "met"

test_deficient_when_small if verdict(segment({"shape": "downspout-2x3", "place": "exterior"})) == "deficient"

test_deficient_indoors if verdict(segment({"shape": "downspout-3x4", "place": "garage"})) == "deficient"

test_unrecorded_without_place if verdict(segment({"shape": "downspout-3x4"})) == "unrecorded"

test_not_applicable_to_round_pipe if verdict(segment({"shape": "round"})) == "not-applicable"

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
		["p", ["systems", 0, "pipe", 0, "shape"]],
	}
}

test_says_that_the_place_is_missing if {
	got := rule.missing with input as segment({"shape": "downspout-3x4"}) with data.profile as profile
	got == {["p", ["systems", 0, "pipe", 0, "place"]]}
}
