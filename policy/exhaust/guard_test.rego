package policy.exhaust.guard_test

import data.policy.exhaust.guard as rule
import data.policy.lib
import rego.v2

# SGM-SF 2017 (12/20) 6.4.14.4: mesh is recommended, clear opening 1/2 in or more.
profile := {"exhaust": {"guard": {"kinds": {"any_of": ["mesh", "rain-diverter", "other"]}, "opening": {"si": 0.0127}}}}

outlet(discharge) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"discharge": discharge,
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_half_an_inch if verdict(outlet({"guard": "mesh", "guard_opening": {"si": 0.0127}})) == "met"

test_met_by_a_diverter if verdict(outlet({"guard": "rain-diverter"})) == "met"

test_deficient_with_quarter_inch_mesh if verdict(outlet({"guard": "mesh", "guard_opening": {"si": 0.00635}})) == "deficient"

test_deficient_without_one if verdict(outlet({"guard": "none"})) == "deficient"

test_unrecorded_mesh if verdict(outlet({"guard": "mesh"})) == "unrecorded"

test_unrecorded if verdict(outlet({"guard_opening": {"si": 0.0127}})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "discharge", "guard"]],
	}
}

test_says_that_the_opening_is_missing if {
	got := rule.missing with input as outlet({"guard": "mesh"}) with data.profile as profile
	got == {["s", ["systems", 0, "discharge", "guard_opening"]]}
}
