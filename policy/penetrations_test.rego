package policy.penetrations_test

import data.policy.penetrations
import rego.v2

job := {"systems": [
	{"id": "s", "kind": "sub-slab", "pipe": [
		{"id": "riser", "penetrations": [{"id": "hole"}]},
		{"id": "stack"},
	]},
	{"id": "hrv", "kind": "heat-recovery-ventilation", "pipe": [{"id": "duct", "penetrations": [{"id": "port"}]}, {"id": "tee"}]},
	{"id": "bare", "kind": "sealing-only"},
	{"id": "odd", "pipe": [{"id": "stray", "penetrations": [{"id": "gap"}]}]},
]}

test_judges_holes_of_soil_gas_pipe if {
	got := penetrations.judged with input as job
	got == {"hole"}
}

test_a_missing_list_stands_for_its_holes if {
	got := penetrations.gaps with input as job
	got == {
		["stack", ["systems", 0, "pipe", 1, "penetrations"]],
		["tee", ["systems", 1, "pipe", 1, "penetrations"]],
		["bare", ["systems", 2, "pipe"]],
	}
}

test_leaves_out_other_kinds if {
	got := penetrations.outside with input as job
	got == {
		["port", "this kind of system lets out no soil gas"],
		["tee", "this kind of system lets out no soil gas"],
		["bare", "this kind of system lets out no soil gas"],
	}
}

test_names_what_is_not_said if {
	got := penetrations.unsaid with input as job
	got == {["gap", ["systems", 3, "kind"]]}
}

test_a_record_without_systems if {
	got := penetrations.gaps with input as {}
	got == {["systems", ["systems"]]}
}
