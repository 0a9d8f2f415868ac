package policy.fan.place_test

import data.policy.fan.place as rule
import data.policy.lib
import rego.v2

# 25 Pa. Code 240.308(c): not below grade, in a window well, in conditioned space,
# in a basement or crawlspace. EPA RMS 1994 14.3.2 (from memory): the same.
profile := {"fan": {"place": {"allowed": {"any_of": ["attic", "garage", "exterior", "enclosure-outdoors", "roof"]}}}}

mounted(fan) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"fan": fan,
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_outdoors if verdict(mounted({"place": "exterior"})) == "met"

test_met_in_an_attic if verdict(mounted({"place": "attic"})) == "met"

test_deficient_in_a_basement if verdict(mounted({"place": "basement"})) == "deficient"

test_deficient_in_a_window_well if verdict(mounted({"place": "window-well"})) == "deficient"

test_unrecorded if verdict(mounted({})) == "unrecorded"

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
	}
}

# Health Canada, Summary Report on ASD Field Study, 2016 (catalogue abstract):
# a fan indoors is an accepted layout.
test_canada_lets_the_fan_stand_in_a_basement if {
	canada := {"fan": {"place": {"allowed": {"any_of": ["attic", "basement", "exterior"]}}}}
	"met" == lib.verdict(rule, "s") with input as mounted({"place": "basement"}) with data.profile as canada
}
