package policy.gauge.steady_test

import data.policy.gauge.steady as rule
import data.policy.lib
import rego.v2

# CCAH 2020 exhibit 2: a change of 20 % or more calls for service.
profile := {"gauge": {"steady": {"fall": {"si": -0.2}, "rise": {"si": 0.2}, "kinds": {"any_of": ["u-tube", "dial", "digital"]}}}}

read(gauge, value) := {
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": gauge}],
	"derived": {"systems": [{"id": "s", "at": "/systems/0", "gauge_change": value}]},
}

tube := {"kind": "u-tube", "readings": [{"id": "r", "fan_on": true}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_unchanged if verdict(read(tube, {"si": 0})) == "met"

test_met_below_the_limit if verdict(read(tube, {"si": -0.19})) == "met"

test_deficient_at_exactly_a_fifth_less if verdict(read(tube, {"si": -0.2})) == "deficient"

test_deficient_at_exactly_a_fifth_more if verdict(read(tube, {"si": 0.2})) == "deficient"

test_unrecorded if verdict(read(tube, {"undetermined": ["/systems/0/gauge/readings"]})) == "unrecorded"

test_unrecorded_when_a_reading_does_not_say_if_the_fan_ran if {
	verdict(read({"kind": "u-tube", "readings": [{"id": "r"}]}, {"si": 0.1})) == "unrecorded"
}

test_not_applicable_to_a_current_meter if verdict(read({"kind": "current"}, {})) == "not-applicable"

test_not_applicable_without_a_gauge if verdict(read({"kind": "none"}, {})) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as read({"readings": [{"id": "r"}]}, {"undetermined": ["/systems/0/gauge/readings"]}) with data.profile as profile
	got == {
		["s", ["systems", 0, "gauge", "kind"]],
		["s", ["systems", 0, "gauge", "readings", 0, "fan_on"]],
		["s", ["derived", "systems", 0, "gauge_change"]],
	}
}
