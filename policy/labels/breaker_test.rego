package policy.labels.breaker_test

import data.policy.labels.breaker as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 16.6 (from memory): breakers of fan and failure-warning device named
# for the radon system.
wiring(electrical, alarm, labels) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"electrical": electrical, "alarm": alarm, "labels": labels,
}]}

fixed := {"connection": "hard-wired"}

plug := {"connection": "plug-in"}

none := {"kind": "none"}

named := [{"id": "a", "kind": "breaker", "says_system": true}]

verdict(job) := v if v := lib.verdict(rule, "s") with input as job

test_met if verdict(wiring(fixed, none, named)) == "met"

test_met_for_the_alarm_circuit if verdict(wiring(plug, {"kind": "audible", "power": "mains"}, named)) == "met"

test_deficient if verdict(wiring(fixed, none, [{"id": "a", "kind": "system"}])) == "deficient"

test_deficient_wording if verdict(wiring(fixed, none, [{"id": "a", "kind": "breaker", "says_system": false}])) == "deficient"

test_unrecorded_wording if verdict(wiring(fixed, none, [{"id": "a", "kind": "breaker"}])) == "unrecorded"

test_unrecorded_connection if verdict(wiring({}, none, named)) == "unrecorded"

test_unrecorded_power_of_the_alarm if verdict(wiring(plug, {"kind": "audible"}, named)) == "unrecorded"

test_unrecorded_alarm if verdict(wiring(plug, {}, named)) == "unrecorded"

test_unrecorded_labels if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "electrical": fixed}]}) == "unrecorded"
}

test_not_applicable_with_a_plug_and_no_alarm if verdict(wiring(plug, none, [])) == "not-applicable"

test_not_applicable_with_a_plug_and_a_battery if {
	verdict(wiring(plug, {"kind": "audible", "power": "battery"}, [])) == "not-applicable"
}

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive", "labels": []}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [
		{"id": "s", "labels": [{"id": "a"}, {"id": "b", "kind": "breaker"}]},
		{"id": "t", "kind": "sub-slab", "powered_by": "fan", "electrical": plug, "labels": []},
	]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "labels", 0, "kind"]],
		["s", ["systems", 0, "labels", 1, "says_system"]],
		["s", ["systems", 0, "electrical", "connection"]],
		["t", ["systems", 1, "alarm", "kind"]],
		["t", ["systems", 1, "alarm", "power"]],
	}
}
