package policy.alarm.tested_test

import data.policy.alarm.tested as rule
import data.policy.lib
import rego.v2

# common practice
fitted(alarm) := {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "alarm": alarm}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job

test_met if verdict(fitted({"kind": "audible", "power": "mains", "tested": true})) == "met"

test_deficient if verdict(fitted({"kind": "audible", "power": "mains", "tested": false})) == "deficient"

test_unrecorded if verdict(fitted({"kind": "audible", "power": "mains"})) == "unrecorded"

test_unrecorded_kind if verdict(fitted({"power": "mains", "tested": true})) == "unrecorded"

test_not_applicable_without_an_alarm if verdict(fitted({"kind": "none"})) == "not-applicable"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}

test_says_what_is_missing if {
	got := rule.missing with input as fitted({})
	got == {
		["s", ["systems", 0, "alarm", "kind"]],
		["s", ["systems", 0, "alarm", "tested"]],
	}
}
