package policy.pipes_test

import data.policy.pipes
import rego.v2

job := {"systems": [
	{"id": "s", "kind": "sub-slab", "pipe": [
		{"id": "riser", "above_ground": true},
		{"id": "tail", "above_ground": false},
		{"id": "loft"},
	]},
	{"id": "hrv", "kind": "heat-recovery-ventilation", "pipe": [{"id": "duct", "above_ground": true}]},
	{"id": "bare", "kind": "heat-recovery-ventilation"},
	{"id": "odd", "pipe": [{"id": "stray", "above_ground": true}]},
]}

test_judges_what_runs_above_the_ground if {
	got := pipes.judged with input as job
	got == {"riser"}
}

test_leaves_out_on_recorded_facts_only if {
	got := pipes.outside with input as job
	got == {
		["tail", "it lies below slab, soil or membrane"],
		["duct", "this kind of system lets out no soil gas"],
		["bare", "this kind of system lets out no soil gas"],
	}
}

test_names_what_is_not_said if {
	got := pipes.unsaid with input as job
	got == {
		["loft", ["systems", 0, "pipe", 2, "above_ground"]],
		["stray", ["systems", 3, "kind"]],
	}
}

test_a_system_without_a_list_stands_for_its_pipe if {
	got := pipes.gaps with input as job
	got == {["bare", ["systems", 2, "pipe"]]}
}

test_a_record_without_systems_too if {
	got := pipes.gaps with input as {}
	got == {["systems", ["systems"]]}
}
