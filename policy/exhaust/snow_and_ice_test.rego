package policy.exhaust.snow_and_ice_test

import data.policy.exhaust.snow_and_ice as rule
import data.policy.lib
import rego.v2

# SGM-SF 2017 (12/20) 6.4.14.1(b)(c) and 6.4.14.2: advice for cold climates.
profile := {"exhaust": {"snow_and_ice": {}}}

outlet(discharge) := {
	"house": {"freezing_climate": true},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": discharge}],
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(outlet({"ice_considered": true})) == "met"

test_deficient if verdict(outlet({"ice_considered": false})) == "deficient"

test_unrecorded if verdict(outlet({})) == "unrecorded"

test_not_applicable_where_nothing_freezes if verdict({"house": {"freezing_climate": false}, "systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}]}) == "not-applicable"

test_unrecorded_without_the_climate if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": {"ice_considered": true}}]}) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "discharge", "ice_considered"]],
		["s", ["house", "freezing_climate"]],
	}
}
