package policy.slabs_test

import data.policy.slabs
import rego.v2

job := {
	"house": {"foundations": [{"id": "a", "fill": "gravel"}, {"id": "b", "fill": "clay"}, {"id": "c"}]},
	"systems": [
		{"id": "s", "foundations": ["a", "b"]},
		{"id": "t", "foundations": ["a", "c"]},
		{"id": "u"},
	],
	"diagnostics": {"communication_tests": [
		{"id": "full", "foundation": "a", "system": "s", "holes": [{"id": "h", "pressure": {"si": -4}}]},
		{"id": "smoke", "foundation": "b", "holes": [{"id": "i"}]},
	]},
	"derived": {"communication": [
		{"id": "full", "at": "/diagnostics/communication_tests/0", "coverage": {"si": 1}},
		{"id": "smoke", "at": "/diagnostics/communication_tests/1", "coverage": {"si": 1}},
	]},
}

test_fills if {
	got := slabs.fills with input as job
	got == {["s", "gravel"], ["s", "clay"], ["t", "gravel"]}
}

test_told if {
	got := slabs.told with input as job
	got == {"s"}
}

test_untold if {
	got := slabs.untold with input as job
	got == {["t", ["house", "foundations", 2, "fill"]], ["u", ["systems", 2, "foundations"]]}
}

test_reached if {
	got := slabs.reached with input as job
	got == {["a", 1]}
}

test_reached_by if {
	got := slabs.reached_by with input as job
	got == {["s", "a", 1]}
}
