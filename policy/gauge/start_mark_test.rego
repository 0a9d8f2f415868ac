package policy.gauge.start_mark_test

import data.policy.gauge.start_mark as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 16.4 (from memory): a manometer is marked with the pressure at first
# start.
profile := {"gauge": {"start_mark": {"kinds": {"any_of": ["u-tube", "dial", "digital"]}, "excused_by": {"any_of": []}}}}

# RMS-LB 2018 (12/20) 8.2.1(b) and its exception: any display is marked, unless
# remote monitoring tells of a failure.
consensus := {"gauge": {"start_mark": {
	"kinds": {"any_of": ["u-tube", "dial", "digital", "flow", "current"]},
	"excused_by": {"any_of": ["remote-notice"]},
}}}

fitted(gauge, alarm) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"gauge": gauge, "alarm": alarm,
}]}

hung(gauge) := fitted(gauge, {"kind": "remote", "remote_notifies": true})

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

excusing(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as consensus

test_met if verdict(hung({"kind": "u-tube", "start_mark_present": true})) == "met"

test_deficient if verdict(hung({"kind": "u-tube", "start_mark_present": false})) == "deficient"

test_unrecorded if verdict(hung({"kind": "u-tube"})) == "unrecorded"

test_not_applicable_to_a_current_meter if verdict(hung({"kind": "current"})) == "not-applicable"

test_excused if excusing(hung({"kind": "current", "start_mark_present": false})) == "not-applicable"

test_not_excused if {
	excusing(fitted({"kind": "u-tube", "start_mark_present": false}, {"kind": "audible", "remote_notifies": false})) == "deficient"
}

test_excuse_unrecorded if excusing(fitted({"kind": "u-tube", "start_mark_present": false}, {})) == "unrecorded"

test_not_applicable_without_a_gauge if verdict(hung({"kind": "none"})) == "not-applicable"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as fitted({}, {}) with data.profile as consensus
	got == {["s", ["systems", 0, "gauge", "kind"]], ["s", ["systems", 0, "gauge", "start_mark_present"]]}
}

test_says_that_the_excuse_is_missing if {
	got := rule.missing with data.profile as consensus with input as fitted({"kind": "u-tube", "start_mark_present": false}, {})
	got == {["s", ["systems", 0, "alarm", "remote_notifies"]]}
}
