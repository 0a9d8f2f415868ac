package policy.pipe.fittings_match_test

import data.policy.lib
import data.policy.pipe.fittings_match as rule
import rego.v2

# EPA RMS 1994 15.3 (from memory): fittings of the pipe's material.
segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job

bends(match) := segment(object.union({"fittings": [{"kind": "elbow-90-sweep", "count": 1}]}, match))

test_met if verdict(bends({"fittings_match_pipe": true})) == "met"

test_deficient if verdict(bends({"fittings_match_pipe": false})) == "deficient"

test_unrecorded_with_fittings if verdict(bends({})) == "unrecorded"

test_not_applicable_to_straight_pipe if verdict(segment({"fittings": []})) == "not-applicable"

test_unrecorded_when_nobody_says_whether_there_are_any if verdict(segment({"fittings_match_pipe": true})) == "unrecorded"

test_unrecorded if verdict(segment({})) == "unrecorded"

test_not_applicable_below_the_slab if verdict(segment({"above_ground": false})) == "not-applicable"

test_unrecorded_without_a_list_of_pipe if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab"}]}
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "pipe": [{"id": "p"}]}]}
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "pipe", 0, "above_ground"]],
		["p", ["systems", 0, "pipe", 0, "fittings"]],
		["p", ["systems", 0, "pipe", 0, "fittings_match_pipe"]],
	}
}
