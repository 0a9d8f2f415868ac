package policy.exhaust.support_near_outlet_test

import data.policy.exhaust.support_near_outlet as rule
import data.policy.lib
import rego.v2

# SGM-SF 2017 (12/20) 6.4.14.1(a): within 3 ft of the exhaust point, advice.
profile := {"exhaust": {"support_near_outlet": {"maximum": {"si": 0.9144}}}}

wall(distance) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"discharge": {"mounting": "exterior-wall", "support_distance": distance},
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_three_feet if verdict(wall({"si": 0.9144})) == "met"

test_deficient_at_one_metre if verdict(wall({"si": 1})) == "deficient"

test_unrecorded if verdict(wall({})) == "unrecorded"

test_not_applicable_through_the_roof if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": {"mounting": "through-roof"}}]}) == "not-applicable"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "discharge", "mounting"]],
		["s", ["systems", 0, "discharge", "support_distance"]],
	}
}
