package policy.suction.pipe_held_up_test

import data.policy.lib
import data.policy.suction.pipe_held_up as rule
import rego.v2

# EPA RMS 1994 14.2.5 (from memory): the bottom of the pipe is held so that it
# cannot drop and plug itself in pit, sump or membrane.
profile := {"suction": {"pipe_held_up": {"through": {"any_of": ["slab", "sump-lid", "membrane"]}}}}

point(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab",
	"suction_points": [object.union({"id": "p"}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

test_met if verdict(point({"through": "slab", "pipe_held_up": true})) == "met"

test_deficient if verdict(point({"through": "sump-lid", "pipe_held_up": false})) == "deficient"

test_unrecorded_in_a_slab if verdict(point({"through": "slab"})) == "unrecorded"

test_not_applicable_through_a_wall if verdict(point({"through": "wall-from-outside"})) == "not-applicable"

test_unrecorded if verdict(point({})) == "unrecorded"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab"}]} with data.profile as profile
}

test_not_applicable_to_pressurization if {
	verdict({"systems": [{"id": "s", "kind": "pressurization", "suction_points": [{"id": "p"}]}]}) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "suction_points": [{"id": "p"}]}]} with data.profile as profile
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "suction_points", 0, "through"]],
		["p", ["systems", 0, "suction_points", 0, "pipe_held_up"]],
	}
}
