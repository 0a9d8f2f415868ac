package policy.electrical.disconnect_test

import data.policy.electrical.disconnect as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 14.6.7 (from memory; Illinois agrees): switch or breaker in the fan
# circuit, not needed for a plug-in fan.
profile := {"electrical": {"disconnect": {"allowed": {"any_of": ["switch", "breaker"]}}}}

wired(fields) := {"systems": [object.union({"id": "s", "powered_by": "fan"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

cut(disconnect) := wired({"electrical": {"connection": "hard-wired", "disconnect": disconnect}})

test_met if verdict(cut("switch")) == "met"

test_deficient if verdict(cut("none")) == "deficient"

test_deficient_with_a_plug_that_is_not_there if verdict(cut("plug")) == "deficient"

test_unrecorded_when_hard_wired if verdict(wired({"electrical": {"connection": "hard-wired"}})) == "unrecorded"

test_not_applicable_with_a_plug if verdict(wired({"electrical": {"connection": "plug-in"}})) == "not-applicable"

test_unrecorded if verdict(wired({})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "electrical", "connection"]],
		["s", ["systems", 0, "electrical", "disconnect"]],
	}
}
