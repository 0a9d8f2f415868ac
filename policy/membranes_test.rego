package policy.membranes_test

import data.policy.membranes
import rego.v2

job := {"systems": [
	{"id": "sheet", "kind": "sub-membrane"},
	{"id": "slab", "kind": "sub-slab"},
	{"id": "blank"},
]}

test_kinds if {
	laid := membranes.laid with input as job
	laid == {"sheet"}
	none := membranes.none with input as job
	{id | some [id, _] in none} == {"slab"}
	unsaid := membranes.unsaid with input as job
	unsaid == {["blank", ["systems", 2, "kind"]]}
}

test_systems_not_recorded if {
	got := membranes.unlisted with input as {}
	got == {["systems", ["systems"]]}
}
