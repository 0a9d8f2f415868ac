package policy.alarms_test

import data.policy.alarms
import rego.v2

job := {"systems": [
	{"id": "loud", "kind": "sub-slab", "powered_by": "fan", "alarm": {"kind": "audible", "power": "mains"}},
	{"id": "none", "kind": "sub-slab", "powered_by": "fan", "alarm": {"kind": "none"}},
	{"id": "stack", "kind": "sub-slab", "powered_by": "passive", "alarm": {"kind": "audible", "power": "battery"}},
	{"id": "blank", "kind": "sub-slab", "powered_by": "fan"},
]}

test_fitted if {
	got := alarms.fitted with input as job
	got == {"loud"}
}

test_absent if {
	got := alarms.absent with input as job
	{id | some [id, _] in got} == {"none", "stack"}
}

test_power if {
	got := alarms.power with input as job
	got == {["loud", "mains"]}
}

test_powerless if {
	got := alarms.powerless with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "alarm", "kind"]],
		["s", ["systems", 0, "alarm", "power"]],
	}
}
