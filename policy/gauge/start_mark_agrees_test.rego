package policy.gauge.start_mark_agrees_test

import data.policy.gauge.start_mark_agrees as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 16.4 (from memory): the mark shows the pressure at first start. The
# tolerance is half a division of a scale in tenths of an inch: common practice.
profile := {"gauge": {"start_mark_agrees": {
	"difference": {"si": 12.4544},
	"kinds": {"any_of": ["u-tube", "dial", "digital"]},
}}}

hung(gauge, difference) := {
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": gauge}],
	"derived": {"systems": [{"id": "s", "at": "/systems/0", "start_mark_difference": difference}]},
}

tube := {"kind": "u-tube", "start_mark_present": true, "readings": [{"id": "r", "fan_on": true}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_when_equal if verdict(hung(tube, {"si": 0})) == "met"

test_met_at_exactly_half_a_division if verdict(hung(tube, {"si": 12.4544})) == "met"

test_deficient if verdict(hung(tube, {"si": 24.9089})) == "deficient"

test_unrecorded if verdict(hung(tube, {"undetermined": ["/systems/0/gauge/readings"]})) == "unrecorded"

test_unrecorded_without_a_word_on_the_mark if {
	verdict(hung({"kind": "u-tube", "readings": [{"id": "r", "fan_on": true}]}, {"si": 0})) == "unrecorded"
}

test_unrecorded_when_a_reading_does_not_say_if_the_fan_ran if {
	verdict(hung({"kind": "u-tube", "start_mark_present": true, "readings": [{"id": "r"}]}, {"si": 0})) == "unrecorded"
}

test_not_applicable_without_a_mark if verdict(hung({"kind": "u-tube", "start_mark_present": false}, {})) == "not-applicable"

test_not_applicable_to_a_current_meter if verdict(hung({"kind": "current", "start_mark_present": true}, {})) == "not-applicable"

test_not_applicable_without_a_gauge if verdict(hung({"kind": "none"}, {})) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as hung({"readings": [{"id": "r"}]}, {"undetermined": ["/systems/0/gauge/start_mark"]}) with data.profile as profile
	got == {
		["s", ["systems", 0, "gauge", "kind"]],
		["s", ["systems", 0, "gauge", "start_mark_present"]],
		["s", ["systems", 0, "gauge", "readings", 0, "fan_on"]],
		["s", ["derived", "systems", 0, "start_mark_difference"]],
	}
}
