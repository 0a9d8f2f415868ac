package policy.exhaust.rain_cap_justified_test

import data.policy.exhaust.rain_cap_justified as rule
import data.policy.lib
import rego.v2

# SGM-SF 2017 (12/20) 6.4.14.3: a cap only where local debris or storms call for
# it, advice. Which words give no reason is common practice.
profile := {"exhaust": {"rain_cap_justified": {"no_reason": {"any_of": ["none", "unknown"]}}}}

outlet(discharge) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"discharge": discharge,
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(outlet({"rain_cap": true, "rain_cap_reason": "Oak twigs fall into the pipe every autumn"})) == "met"

test_deficient if verdict(outlet({"rain_cap": true, "rain_cap_reason": "None"})) == "deficient"

test_unrecorded if verdict(outlet({"rain_cap": true})) == "unrecorded"

test_unrecorded_without_the_cap if verdict(outlet({"rain_cap_reason": "Oak twigs"})) == "unrecorded"

test_not_applicable_without_a_cap if verdict(outlet({"rain_cap": false})) == "not-applicable"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "discharge", "rain_cap"]],
		["s", ["systems", 0, "discharge", "rain_cap_reason"]],
	}
}
