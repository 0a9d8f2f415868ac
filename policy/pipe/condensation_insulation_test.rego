package policy.pipe.condensation_insulation_test

import data.policy.lib
import data.policy.pipe.condensation_insulation as rule
import rego.v2

# ANSI/AARST RMS-LB 2018 (12/20) 6.2.10(b): R-1.8 or more with a vapor barrier
# outside. R-1.8 is 0.31699833062815 m2K/W.
profile := {"pipe": {"condensation_insulation": {"minimum": {"si": 0.31699833062815}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

wrapped(insulation) := segment({"insulation": insulation})

test_met_at_exactly_the_limit if {
	verdict(wrapped({"needed": "condensation", "resistance": {"si": 0.31699833062815}, "vapor_barrier": true})) == "met"
}

test_deficient_when_thin if {
	verdict(wrapped({"needed": "condensation", "resistance": {"si": 0.3}, "vapor_barrier": true})) == "deficient"
}

test_deficient_without_barrier if {
	verdict(wrapped({"needed": "both", "resistance": {"si": 1}, "vapor_barrier": false})) == "deficient"
}

test_unrecorded_without_barrier if verdict(wrapped({"needed": "both", "resistance": {"si": 1}})) == "unrecorded"

test_not_applicable_where_nothing_drips if verdict(wrapped({"needed": "freezing"})) == "not-applicable"

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
		["p", ["systems", 0, "pipe", 0, "insulation", "needed"]],
		["p", ["systems", 0, "pipe", 0, "insulation", "resistance"]],
		["p", ["systems", 0, "pipe", 0, "insulation", "vapor_barrier"]],
	}
}
