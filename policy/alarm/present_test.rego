package policy.alarm.present_test

import data.policy.alarm.present as rule
import data.policy.lib
import rego.v2

# RMS-LB 2018 (12/20) 8.2.2: a second device gives an active alert when the fan
# fails, by sound, light or another signal. A remote monitor counts when somebody
# is told (8.2.1, exception).
profile := {"alarm": {"present": {"kinds": {"any_of": ["audible", "visual", "audible-and-visual", "remote"]}}}}

fitted(alarm) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"gauge": {"kind": "u-tube"}, "alarm": alarm,
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(fitted({"kind": "audible"})) == "met"

test_met_remote if verdict(fitted({"kind": "remote", "remote_notifies": true})) == "met"

# The gauge alone is enough for EPA RMS 1994 16.1, not here.
test_deficient if verdict(fitted({"kind": "none"})) == "deficient"

test_deficient_remote_that_tells_nobody if verdict(fitted({"kind": "remote", "remote_notifies": false})) == "deficient"

test_unrecorded if verdict(fitted({})) == "unrecorded"

test_unrecorded_notice if verdict(fitted({"kind": "remote"})) == "unrecorded"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "alarm": {"kind": "remote"}}, {"id": "t"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "alarm", "remote_notifies"]],
		["t", ["systems", 1, "kind"]],
		["t", ["systems", 1, "powered_by"]],
		["t", ["systems", 1, "alarm", "kind"]],
	}
}
