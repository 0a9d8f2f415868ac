package policy.exhaust.clear_of_people_test

import data.policy.exhaust.clear_of_people as rule
import data.policy.lib
import rego.v2

# SGM-SF 2017, first printing, 7.4.8: 20 ft along the line of the jet.
profile := {"exhaust": {"clear_of_people": {"minimum": {"si": 6.096}}}}

place(traits) := {
	"house": {"gathering_places": [object.union({"id": "s"}, traits)]},
	"systems": [{"id": "sys", "kind": "sub-slab", "powered_by": "fan"}],
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_twenty_feet if verdict(place({"in_line_of_jet": true, "distance_along_jet": {"si": 6.096}})) == "met"

test_met_out_of_line if verdict(place({"in_line_of_jet": false})) == "met"

# The text prints 20 ft (6 m); 6.00 m is 19.69 ft.
test_deficient_at_six_metres if verdict(place({"in_line_of_jet": true, "distance_along_jet": {"si": 6}})) == "deficient"

test_unrecorded if verdict(place({"distance_along_jet": {"si": 6}})) == "unrecorded"

test_not_applicable_without_an_outlet if verdict({"house": {"gathering_places": [{"id": "s"}]}, "systems": [{"id": "a", "kind": "sealing-only", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_where_it_is_not_known_whether_a_fan_blows if verdict({"house": {"gathering_places": [{"id": "s", "in_line_of_jet": false}]}, "systems": [{"id": "sys"}]}) == "unrecorded"

test_unrecorded_without_the_list if {
	"unrecorded" == lib.verdict(rule, "house") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"house": {"gathering_places": [{"id": "s"}]}, "systems": [{"id": "sys"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["house", "gathering_places", 0, "in_line_of_jet"]],
		["s", ["house", "gathering_places", 0, "distance_along_jet"]],
	}
}

test_says_that_the_systems_are_missing if {
	got := rule.missing with input as {} with data.profile as profile
	got == {["house", ["systems"]]}
}
