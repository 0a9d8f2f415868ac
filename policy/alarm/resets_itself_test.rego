package policy.alarm.resets_itself_test

import data.policy.alarm.resets_itself as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 16.3 (from memory): an electric monitor resets when power comes back.
profile := {"alarm": {"resets_itself": {"powers": {"any_of": ["mains", "low-voltage"]}}}}

fitted(alarm) := {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "alarm": alarm}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(fitted({"kind": "audible", "power": "mains", "resets_itself": true})) == "met"

test_deficient if verdict(fitted({"kind": "audible", "power": "mains", "resets_itself": false})) == "deficient"

test_unrecorded if verdict(fitted({"kind": "audible", "power": "mains"})) == "unrecorded"

test_unrecorded_kind if verdict(fitted({"power": "mains", "resets_itself": true})) == "unrecorded"

test_not_applicable_without_an_alarm if verdict(fitted({"kind": "none"})) == "not-applicable"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_not_applicable_to_other_power if verdict(fitted({"kind": "audible", "power": "battery"})) == "not-applicable"

test_unrecorded_power if verdict(fitted({"kind": "audible", "resets_itself": true})) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as fitted({}) with data.profile as profile
	got == {
		["s", ["systems", 0, "alarm", "kind"]],
		["s", ["systems", 0, "alarm", "power"]],
		["s", ["systems", 0, "alarm", "resets_itself"]],
	}
}
