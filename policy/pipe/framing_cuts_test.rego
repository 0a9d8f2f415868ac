package policy.pipe.framing_cuts_test

import data.policy.lib
import data.policy.pipe.framing_cuts as rule
import rego.v2

# EPA RMS 1994 14.1.3 (from memory): no more is cut from framing than the code
# allows for plumbing.
segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job

test_met if verdict(segment({"framing_cut_within_code": true})) == "met"

test_deficient if verdict(segment({"framing_cut_within_code": false})) == "deficient"

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
		["p", ["systems", 0, "pipe", 0, "framing_cut_within_code"]],
	}
}
