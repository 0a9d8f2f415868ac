package policy.gauges_test

import data.policy.gauges
import rego.v2

job := {"systems": [
	{"id": "tube", "kind": "sub-slab", "powered_by": "fan", "gauge": {"kind": "u-tube"}},
	{"id": "none", "kind": "sub-slab", "powered_by": "fan", "gauge": {"kind": "none"}},
	{"id": "stack", "kind": "sub-slab", "powered_by": "passive", "gauge": {"kind": "dial"}},
	{"id": "blank", "kind": "sub-slab", "powered_by": "fan"},
]}

test_shown if {
	got := gauges.shown with input as job
	got == {"tube"}
}

test_absent if {
	got := gauges.absent with input as job
	{id | some [id, _] in got} == {"none", "stack"}
}

test_unsaid if {
	got := gauges.unsaid with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "gauge", "kind"]],
	}
}

readings := {"systems": [
	{"id": "said", "gauge": {"readings": [{"id": "a", "fan_on": true}]}},
	{"id": "part", "gauge": {"readings": [{"id": "b", "fan_on": true}, {"id": "c"}]}},
	{"id": "none"},
]}

test_read if {
	got := gauges.read with input as readings
	got == {"said"}
}

test_unread if {
	got := gauges.unread with input as readings
	got == {["part", ["systems", 1, "gauge", "readings", 1, "fan_on"]]}
}
