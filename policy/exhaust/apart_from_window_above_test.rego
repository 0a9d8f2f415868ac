package policy.exhaust.apart_from_window_above_test

import data.policy.exhaust.apart_from_window_above as rule
import data.policy.lib
import rego.v2

# common practice
profile := {"exhaust": {"apart_from_window_above": {}}}

outlet(discharge) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"discharge": discharge,
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(outlet({"below_operable_window": false})) == "met"

test_deficient if verdict(outlet({"below_operable_window": true})) == "deficient"

test_unrecorded if verdict(outlet({})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "discharge", "below_operable_window"]],
	}
}
