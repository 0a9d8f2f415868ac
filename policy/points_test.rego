package policy.points_test

import data.policy.points
import rego.v2

job := {"systems": [
	{"id": "s", "kind": "sub-slab", "suction_points": [{"id": "sp"}]},
	{"id": "t", "kind": "drain-tile"},
	{"id": "air", "kind": "pressurization", "suction_points": [{"id": "stray"}]},
	{"id": "bare", "kind": "sealing-only"},
	{"id": "odd", "suction_points": [{"id": "lost"}]},
]}

test_judges_points_of_soil_gas_systems if {
	got := points.judged with input as job
	got == {"sp"}
}

test_leaves_out_other_kinds if {
	got := points.outside with input as job
	got == {
		["stray", "this kind of system lets out no soil gas"],
		["bare", "this kind of system lets out no soil gas"],
	}
}

test_a_missing_list_stands_for_its_points if {
	got := points.gaps with input as job
	got == {
		["t", ["systems", 1, "suction_points"]],
		["bare", ["systems", 3, "suction_points"]],
	}
}

test_names_what_is_not_said if {
	got := points.unsaid with input as job
	got == {["lost", ["systems", 4, "kind"]]}
}

test_a_record_without_systems if {
	got := points.gaps with input as {}
	got == {["systems", ["systems"]]}
}
