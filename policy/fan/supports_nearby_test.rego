package policy.fan.supports_nearby_test

import data.policy.fan.supports_nearby as rule
import data.policy.lib
import rego.v2

# SGM-SF 2017 (12/20) 6.4.14.1(a): within 18 in above and below an attic fan, advice.
profile := {"fan": {"supports_nearby": {"maximum": {"si": 0.4572}, "places": {"any_of": ["attic", "conditioned-attic"]}}}}

mounted(fan) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"fan": fan,
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_eighteen_inches if verdict(mounted({"place": "attic", "nearest_supports": {"si": 0.4572}})) == "met"

test_deficient_at_nineteen if verdict(mounted({"place": "attic", "nearest_supports": {"si": 0.4826}})) == "deficient"

test_unrecorded if verdict(mounted({"place": "attic"})) == "unrecorded"

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
		["s", ["systems", 0, "fan", "nearest_supports"]],
	}
}
