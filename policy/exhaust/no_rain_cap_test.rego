package policy.exhaust.no_rain_cap_test

import data.policy.exhaust.no_rain_cap as rule
import data.policy.lib
import rego.v2

# 25 Pa. Code 240.308(b)(2): rain caps are banned.
profile := {"exhaust": {"no_rain_cap": {"not_for": {"any_of": ["passive", "rough-in"]}}}}

outlet(discharge) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"discharge": discharge,
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(outlet({"rain_cap": false})) == "met"

# Worked case 11: the cap fails in Pennsylvania.
test_deficient if verdict(outlet({"rain_cap": true})) == "deficient"

test_unrecorded if verdict(outlet({})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_not_applicable_to_ventilation if verdict({"systems": [{"id": "s", "kind": "heat-recovery-ventilation", "powered_by": "fan"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "discharge", "rain_cap"]],
	}
}
