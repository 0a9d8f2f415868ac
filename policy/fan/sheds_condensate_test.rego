package policy.fan.sheds_condensate_test

import data.policy.fan.sheds_condensate as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 14.3.3 (from memory): no condensate in the housing, vertical run
# preferred.
profile := {"fan": {"sheds_condensate": {"upright": {"any_of": ["vertical"]}}}}

mounted(fan) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"fan": fan,
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_upright if verdict(mounted({"orientation": "vertical"})) == "met"

test_met_with_a_bypass if verdict(mounted({"orientation": "horizontal", "condensate_bypass": true})) == "met"

test_deficient if verdict(mounted({"orientation": "tilted", "condensate_bypass": false})) == "deficient"

test_unrecorded_bypass if verdict(mounted({"orientation": "horizontal"})) == "unrecorded"

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
		["s", ["systems", 0, "fan", "orientation"]],
	}
}

test_says_that_the_bypass_is_missing if {
	got := rule.missing with input as mounted({"orientation": "horizontal"}) with data.profile as profile
	got == {["s", ["systems", 0, "fan", "condensate_bypass"]]}
}
