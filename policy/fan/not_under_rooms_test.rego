package policy.fan.not_under_rooms_test

import data.policy.fan.not_under_rooms as rule
import data.policy.lib
import rego.v2

# 25 Pa. Code 240.308(c)(2) and CCAH 2020 701.2.1: no interior place directly below
# heated, cooled or occupiable space.
profile := {"fan": {"not_under_rooms": {"outdoors": {"any_of": ["exterior", "enclosure-outdoors", "roof"]}}}}

mounted(fan) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"fan": fan,
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(mounted({"place": "garage", "under_conditioned_space": false})) == "met"

test_deficient if verdict(mounted({"place": "garage", "under_conditioned_space": true})) == "deficient"

test_unrecorded if verdict(mounted({"place": "garage"})) == "unrecorded"

test_unrecorded_without_the_place if verdict(mounted({"under_conditioned_space": false})) == "unrecorded"

test_not_applicable_outdoors if verdict(mounted({"place": "exterior"})) == "not-applicable"

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
		["s", ["systems", 0, "fan", "under_conditioned_space"]],
	}
}
