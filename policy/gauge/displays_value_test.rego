package policy.gauge.displays_value_test

import data.policy.gauge.displays_value as rule
import data.policy.lib
import rego.v2

# RMS-LB 2018 (12/20) 8.2.1(a): a measured value, pressure or current, is shown
# all the time.
profile := {"gauge": {"displays_value": {"kinds": {"any_of": ["u-tube", "dial", "digital", "current"]}}}}

hung(gauge) := {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": gauge}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_pressure if verdict(hung({"kind": "u-tube"})) == "met"

test_met_current if verdict(hung({"kind": "current"})) == "met"

test_deficient_without_a_gauge if verdict(hung({"kind": "none"})) == "deficient"

test_deficient_flow_is_not_named if verdict(hung({"kind": "flow"})) == "deficient"

test_unrecorded if verdict(hung({})) == "unrecorded"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "gauge", "kind"]],
	}
}
