package policy.pipe.framing_figures_test

import data.policy.lib
import data.policy.pipe.framing_figures as rule
import rego.v2

# ANSI/AARST RMS-LB 2018 (12/20) 6.2.11(a), advice: no notch in the middle third
# of a solid joist, none deeper than 1/6 of it, 2 in of wood beside a hole.
profile := {"pipe": {"framing_figures": {"notch": {"si": 0.166666666666667}, "edge": {"si": 0.0508}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

notched(share, middle) := segment({"framing_cuts": ["notch"], "notch_share": {"si": share}, "notch_in_middle_third": middle})

test_met_at_exactly_a_sixth if verdict(notched(0.166666666666667, false)) == "met"

test_deficient_deeper if verdict(notched(0.17, false)) == "deficient"

test_deficient_in_the_middle if verdict(notched(0.1, true)) == "deficient"

test_met_at_exactly_two_inches if verdict(segment({"framing_cuts": ["hole"], "hole_edge": {"si": 0.0508}})) == "met"

test_deficient_nearer_the_edge if verdict(segment({"framing_cuts": ["hole"], "hole_edge": {"si": 0.05}})) == "deficient"

test_both_have_to_be_right if {
	verdict(segment({"framing_cuts": ["notch", "hole"], "notch_share": {"si": 0.1}, "notch_in_middle_third": false})) == "unrecorded"
}

test_not_applicable_where_nothing_was_cut if verdict(segment({"framing_cuts": []})) == "not-applicable"

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
		["p", ["systems", 0, "pipe", 0, "framing_cuts"]],
	}
}

test_says_which_figures_are_missing if {
	got := rule.missing with input as segment({"framing_cuts": ["notch", "hole"]}) with data.profile as profile
	got == {
		["p", ["systems", 0, "pipe", 0, "notch_share"]],
		["p", ["systems", 0, "pipe", 0, "notch_in_middle_third"]],
		["p", ["systems", 0, "pipe", 0, "hole_edge"]],
	}
}
