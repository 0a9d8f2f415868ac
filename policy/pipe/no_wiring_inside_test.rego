package policy.pipe.no_wiring_inside_test

import data.policy.lib
import data.policy.pipe.no_wiring_inside as rule
import rego.v2

# EPA RMS 1994 14.6.2 (from memory) and 32 Ill. Adm. Code 422.150(h)(10) (read in
# a course text): no wiring inside radon pipe.
segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job

test_met if verdict(segment({"wiring_inside": false})) == "met"

test_deficient if verdict(segment({"wiring_inside": true})) == "deficient"

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
		["p", ["systems", 0, "pipe", 0, "wiring_inside"]],
	}
}
