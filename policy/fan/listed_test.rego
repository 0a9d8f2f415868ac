package policy.fan.listed_test

import data.policy.fan.listed as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 15.1 (from memory): electrical parts are listed.
profile := {"fan": {"listed": {}}}

mounted(fan) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"fan": fan,
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(mounted({"listed": true})) == "met"

test_deficient if verdict(mounted({"listed": false})) == "deficient"

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
		["s", ["systems", 0, "fan", "listed"]],
	}
}
