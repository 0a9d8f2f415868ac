package policy.pipe.freeze_insulation_test

import data.policy.lib
import data.policy.pipe.freeze_insulation as rule
import rego.v2

# ANSI/AARST RMS-LB 2018 (12/20) 6.2.10(a): R-4 or more, protected from weather,
# where ice would build up. R-4 is 0.704440734729223 m2K/W.
profile := {"pipe": {"freeze_insulation": {"minimum": {"si": 0.704440734729223}, "outdoors": {"any_of": ["exterior"]}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

wrapped(place, insulation) := segment({"place": place, "insulation": insulation})

test_met_at_exactly_r_four if {
	verdict(wrapped("exterior", {"needed": "freezing", "resistance": {"si": 0.704440734729223}, "weather_protected": true})) == "met"
}

test_met_in_the_attic_without_a_cover if {
	verdict(wrapped("attic", {"needed": "both", "resistance": {"si": 1}})) == "met"
}

test_deficient_when_thin if verdict(wrapped("attic", {"needed": "freezing", "resistance": {"si": 0.7}})) == "deficient"

test_deficient_when_bare_to_the_weather if {
	verdict(wrapped("exterior", {"needed": "freezing", "resistance": {"si": 1}, "weather_protected": false})) == "deficient"
}

test_unrecorded_whether_it_is_covered if {
	verdict(wrapped("exterior", {"needed": "freezing", "resistance": {"si": 1}})) == "unrecorded"
}

test_not_applicable_where_no_ice_is_expected if verdict(wrapped("basement", {"needed": "condensation"})) == "not-applicable"

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
		["p", ["systems", 0, "pipe", 0, "place"]],
		["p", ["systems", 0, "pipe", 0, "insulation", "weather_protected"]],
	}
}
