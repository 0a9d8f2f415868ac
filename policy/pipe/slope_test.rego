package policy.pipe.slope_test

import data.policy.lib
import data.policy.pipe.slope as rule
import rego.v2

# SGM-SF 2017 (12/20) 6.2.2: at least 1/8 in per ft down to the suction point;
# where that cannot be, another way to drain.
profile := {"pipe": {"slope": {"minimum": {"si": 0.010416666666666666}, "other_drains": {"any_of": ["condensate-bypass", "other-drain"]}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

level(slope, drainage) := object.union(
	segment(object.union({"run": "horizontal"}, drainage)),
	{"derived": {"segments": [{"id": "p", "at": "/systems/0/pipe/0", "slope": slope}]}},
)

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

test_met_at_exactly_an_eighth if verdict(level({"si": 0.010416666666666666}, {"drainage": "slopes-to-suction"})) == "met"

# Worked case 15: 12 ft with a fall of 1.25 in; 12 x 1/8 in = 1.5 in is called for.
test_deficient_at_an_inch_and_a_quarter_in_twelve_feet if {
	verdict(level({"si": 0.00868055555556}, {"drainage": "slopes-to-suction"})) == "deficient"
}

test_deficient_falling_the_other_way if verdict(level({"si": -0.02}, {"drainage": "holds-water"})) == "deficient"

test_met_with_another_drain if verdict(level({"si": 0}, {"drainage": "condensate-bypass"})) == "met"

test_unrecorded_when_flat_and_nobody_says_where_its_water_goes if verdict(level({"si": 0}, {})) == "unrecorded"

test_unrecorded_without_slope if verdict(level({"undetermined": ["/systems/0/pipe/0/rise"]}, {"drainage": "slopes-to-suction"})) == "unrecorded"

test_not_applicable_to_upright_pipe if verdict(segment({"run": "vertical"})) == "not-applicable"

test_unrecorded if verdict(segment({})) == "unrecorded"

test_not_applicable_below_the_slab if verdict(segment({"above_ground": false})) == "not-applicable"

test_unrecorded_without_a_list_of_pipe if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab"}]} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {
		"systems": [{"id": "s", "pipe": [{"id": "p"}]}],
		"derived": {"segments": [{"id": "p", "at": "/systems/0/pipe/0"}]},
	}
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "pipe", 0, "above_ground"]],
		["p", ["systems", 0, "pipe", 0, "run"]],
		["p", ["systems", 0, "pipe", 0, "drainage"]],
		["p", ["derived", "segments", 0, "slope"]],
	}
}
