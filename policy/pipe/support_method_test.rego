package policy.pipe.support_method_test

import data.policy.lib
import data.policy.pipe.support_method as rule
import rego.v2

# EPA RMS 1994 14.2.3 (from memory): hangers or straps on the structure, never
# plumbing, ducts or equipment.
profile := {"pipe": {"support_method": {"allowed": {"any_of": ["hangers", "straps"]}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

test_met if verdict(segment({"support_method": "straps"})) == "met"

test_deficient_on_plumbing if verdict(segment({"support_method": "from-plumbing"})) == "deficient"

test_deficient_on_nothing if verdict(segment({"support_method": "none"})) == "deficient"

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
		["p", ["systems", 0, "pipe", 0, "support_method"]],
	}
}
