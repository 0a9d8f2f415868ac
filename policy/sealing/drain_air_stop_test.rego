package policy.sealing.drain_air_stop_test

import data.policy.lib
import data.policy.sealing.drain_air_stop as rule
import rego.v2

# SGM-SF 2017 (12/20) 7.8.3 and EPA RMS 1994 14.2.9 (from memory): a one-way valve
# or trap is advised where drain tile under suction runs to daylight.
profile := {"sealing": {"drain_air_stop": {"stops": {"any_of": ["one-way-valve", "trap"]}}}}

tile(fields) := {
	"systems": [{"id": "s", "kind": "drain-tile", "foundations": ["f"]}],
	"house": {"foundations": [object.union({"id": "f"}, fields)]},
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(tile({"drain_ends": "daylight", "drain_air_stop": "trap"})) == "met"

test_deficient if verdict(tile({"drain_ends": "daylight", "drain_air_stop": "none"})) == "deficient"

test_unrecorded if verdict(tile({"drain_ends": "daylight"})) == "unrecorded"

test_unrecorded_end if verdict(tile({"drain_air_stop": "none"})) == "unrecorded"

test_not_applicable_to_a_sump if verdict(tile({"drain_ends": "sump"})) == "not-applicable"

test_one_of_two_areas_to_daylight if {
	verdict(two({"drain_ends": "sump"}, {"drain_ends": "daylight", "drain_air_stop": "trap"})) == "met"
}

two(first, second) := {
	"systems": [{"id": "s", "kind": "drain-tile", "foundations": ["f", "g"]}],
	"house": {"foundations": [object.union({"id": "f"}, first), object.union({"id": "g"}, second)]},
}

no_tile := {"perimeter_drain": "none"}

test_an_area_without_tile_has_no_end if {
	verdict(two({"drain_ends": "sump"}, no_tile)) == "not-applicable"
	verdict(two({"drain_ends": "daylight", "drain_air_stop": "trap"}, no_tile)) == "met"
	verdict(two({"drain_ends": "daylight", "drain_air_stop": "none"}, no_tile)) == "deficient"
	got := rule.missing with data.profile as profile with input as two({}, no_tile)
	got == {["s", ["house", "foundations", 0, "drain_ends"]]}
}

test_a_system_on_tile_has_some if verdict(two(no_tile, no_tile)) == "unrecorded"

test_not_said_where_tile_runs_exempts_nothing if verdict(two({"drain_ends": "sump"}, {})) == "unrecorded"

test_not_applicable_to_a_slab_system if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {
		"systems": [{"id": "s", "foundations": ["f", "g"]}, {"id": "t", "kind": "drain-tile"}],
		"house": {"foundations": [{"id": "f"}, {"id": "g", "drain_ends": "daylight"}]},
	}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["house", "foundations", 0, "drain_ends"]],
		["s", ["house", "foundations", 1, "drain_air_stop"]],
		["t", ["systems", 1, "foundations"]],
	}
}
