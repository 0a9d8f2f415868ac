package policy.pipe.cold_runs_protected_test

import data.policy.lib
import data.policy.pipe.cold_runs_protected as rule
import rego.v2

# EPA RMS 1994 14.2.2 (from memory): runs in attic and open air should be
# protected where it freezes; no figure.
profile := {"pipe": {"cold_runs_protected": {"above": {"si": 0}, "places": {"any_of": ["attic", "exterior"]}}}}

segment(fields) := {
	"house": {"freezing_climate": true},
	"systems": [{
		"id": "s", "kind": "sub-slab",
		"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
	}],
}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

cold(insulation) := segment({"place": "exterior", "insulation": insulation})

test_met if verdict(cold({"needed": "freezing", "resistance": {"si": 0.7}})) == "met"

test_deficient_bare if verdict(cold({"needed": "none"})) == "deficient"

test_deficient_with_nothing_round_it if verdict(cold({"needed": "both", "resistance": {"si": 0}})) == "deficient"

test_unrecorded_without_resistance if verdict(cold({"needed": "both"})) == "unrecorded"

test_not_applicable_indoors if verdict(segment({"place": "basement"})) == "not-applicable"

test_not_applicable_where_it_does_not_freeze if {
	verdict({"house": {"freezing_climate": false}, "systems": [{"id": "s", "kind": "sub-slab", "pipe": [{"id": "p", "above_ground": true, "place": "attic"}]}]}) == "not-applicable"
}

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
		["p", ["systems", 0, "pipe", 0, "place"]],
		["p", ["systems", 0, "pipe", 0, "insulation", "needed"]],
		["p", ["systems", 0, "pipe", 0, "insulation", "resistance"]],
		["p", ["house", "freezing_climate"]],
	}
}
