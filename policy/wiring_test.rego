package policy.wiring_test

import data.policy.wiring
import rego.v2

job := {"systems": [
	{"id": "s", "powered_by": "fan", "fan": {"place": "attic"}, "electrical": {"connection": "plug-in"}},
	{"id": "t", "powered_by": "fan", "fan": {"place": "exterior"}, "electrical": {"connection": "hard-wired"}},
	{"id": "stack", "powered_by": "passive", "fan": {"place": "attic"}, "electrical": {"connection": "plug-in"}},
	{"id": "odd"},
]}

test_fans_are_wired if {
	got := wiring.judged with input as job
	got == {"s", "t"}
}

test_no_fan_no_wire if {
	got := wiring.outside with input as job
	got == {["stack", "no fan drives this system"]}
}

test_how_it_is_connected if {
	plugged := wiring.plugged with input as job
	plugged == {"s", "stack"}
	fixed := wiring.fixed with input as job
	fixed == {"t"}
}

test_names_what_is_not_said if {
	unsaid := wiring.unsaid with input as job
	unsaid == {["odd", ["systems", 3, "powered_by"]]}
	unwired := wiring.unwired with input as job
	unwired == {["odd", ["systems", 3, "electrical", "connection"]]}
	unplaced := wiring.unplaced with input as job
	unplaced == {["odd", ["systems", 3, "fan", "place"]]}
}
