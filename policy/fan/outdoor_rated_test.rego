package policy.fan.outdoor_rated_test

import data.policy.fan.outdoor_rated as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 14.3.4 (from memory): rated for outdoors or in a watertight housing.
profile := {"fan": {"outdoor_rated": {"outdoors": {"any_of": ["exterior", "enclosure-outdoors", "roof"]}}}}

mounted(fan) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"fan": fan,
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_rated if verdict(mounted({"place": "exterior", "outdoor_rated": true})) == "met"

test_met_housed if verdict(mounted({"place": "exterior", "outdoor_rated": false, "housing_weatherproof": true})) == "met"

test_deficient if verdict(mounted({"place": "roof", "outdoor_rated": false, "housing_weatherproof": false})) == "deficient"

test_unrecorded_housing if verdict(mounted({"place": "roof", "outdoor_rated": false})) == "unrecorded"

test_unrecorded if verdict(mounted({"place": "roof"})) == "unrecorded"

test_unrecorded_place if verdict(mounted({"outdoor_rated": true})) == "unrecorded"

test_not_applicable_in_an_attic if verdict(mounted({"place": "attic"})) == "not-applicable"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "fan", "place"]],
		["s", ["systems", 0, "fan", "outdoor_rated"]],
	}
}

test_says_that_the_housing_is_missing if {
	got := rule.missing with input as mounted({"place": "roof", "outdoor_rated": false}) with data.profile as profile
	got == {["s", ["systems", 0, "fan", "housing_weatherproof"]]}
}
