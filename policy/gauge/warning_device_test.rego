package policy.gauge.warning_device_test

import data.policy.gauge.warning_device as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 16.1 (from memory): a device that shows pressure or flow and tells
# of failure by sight or sound. Either of the two is enough there; the consensus
# text asks for both.
profile := {"gauge": {"warning_device": {
	"gauges": {"any_of": ["u-tube", "dial", "digital", "flow"]},
	"alarms": {"any_of": ["audible", "visual", "audible-and-visual"]},
}}}

fitted(gauge, alarm) := {"systems": [{
	"id": "s", "kind": "block-wall", "powered_by": "fan",
	"gauge": gauge, "alarm": alarm,
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_by_a_gauge if verdict(fitted({"kind": "u-tube"}, {"kind": "none"})) == "met"

test_met_by_a_gauge_alone if verdict(fitted({"kind": "u-tube"}, {})) == "met"

test_met_by_an_alarm if verdict(fitted({"kind": "none"}, {"kind": "audible"})) == "met"

test_deficient if verdict(fitted({"kind": "none"}, {"kind": "none"})) == "deficient"

test_unrecorded_alarm if verdict(fitted({"kind": "none"}, {})) == "unrecorded"

test_unrecorded_gauge if verdict(fitted({}, {"kind": "none"})) == "unrecorded"

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
		["s", ["systems", 0, "alarm", "kind"]],
	}
}
