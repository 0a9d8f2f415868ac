package policy.pipe.material_test

import data.policy.lib
import data.policy.pipe.material as rule
import rego.v2

# IRC 2018 AF103.6.1 (from memory): gas-tight ABS or PVC, or the equal of them.
profile := {"pipe": {"material": {"allowed": {"any_of": ["pvc", "abs"]}, "arguable": {"any_of": ["polyethylene", "other"]}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

test_met if verdict(segment({"material": "abs"})) == "met"

test_undetermined_for_what_may_be_equal if verdict(segment({"material": "polyethylene"})) == "undetermined"

test_deficient if verdict(segment({"material": "metal-downspout"})) == "deficient"

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
		["p", ["systems", 0, "pipe", 0, "material"]],
	}
}
