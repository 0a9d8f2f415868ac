package policy.alarm.power_in_reach_test

import data.policy.alarm.power_in_reach as rule
import data.policy.lib
import rego.v2

# IRC 2018 Appendix F AF103.12 (from memory): a supply where a failure alarm is
# expected, in new houses, also with a passive pipe.
profile := {"alarm": {"power_in_reach": {"not_for": {"any_of": ["existing"]}}}}

wired(electrical) := {
	"house": {"new_construction": true},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive", "electrical": electrical}],
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(wired({"alarm_outlet_provided": true})) == "met"

test_deficient if verdict(wired({"alarm_outlet_provided": false})) == "deficient"

test_unrecorded if verdict(wired({})) == "unrecorded"

test_unrecorded_house if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "electrical": {"alarm_outlet_provided": true}}]}) == "unrecorded"
}

test_not_applicable_to_a_house_that_stands if {
	verdict({"house": {"new_construction": false}, "systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"
}

test_not_applicable_to_ventilation if {
	verdict({"house": {"new_construction": true}, "systems": [{"id": "s", "kind": "heat-recovery-ventilation"}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["house", "new_construction"]],
		["s", ["systems", 0, "electrical", "alarm_outlet_provided"]],
	}
}
