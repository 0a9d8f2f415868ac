package policy.fan.attic_enclosure_test

import data.policy.fan.attic_enclosure as rule
import data.policy.lib
import rego.v2

# CCAH 2020 701.2.2: sealed, accessible, vented outdoors through 25 sq in or more.
profile := {"fan": {"attic_enclosure": {"vent_area": {"si": 0.016129}}}}

boxed(enclosure) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"fan": {"place": "conditioned-attic", "enclosure": enclosure},
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_25_square_inches if verdict(boxed({"sealed": true, "accessible": true, "net_free_vent_area": {"si": 0.016129}})) == "met"

# Worked case 13: a sealed box with a vent of 20 sq in.
test_case_13 if verdict(boxed({"sealed": true, "accessible": true, "net_free_vent_area": {"si": 0.0129032}})) == "deficient"

test_deficient_leaky if verdict(boxed({"sealed": false, "accessible": true, "net_free_vent_area": {"si": 0.02}})) == "deficient"

test_deficient_out_of_reach if verdict(boxed({"sealed": true, "accessible": false, "net_free_vent_area": {"si": 0.02}})) == "deficient"

test_unrecorded if verdict(boxed({})) == "unrecorded"

test_not_applicable_in_a_vented_attic if verdict(mounted({"place": "attic"})) == "not-applicable"

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
		["s", ["systems", 0, "fan", "enclosure", "sealed"]],
		["s", ["systems", 0, "fan", "enclosure", "accessible"]],
		["s", ["systems", 0, "fan", "enclosure", "net_free_vent_area"]],
	}
}

mounted(fan) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"fan": fan,
}]}
