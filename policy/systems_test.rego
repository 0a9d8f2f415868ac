package policy.systems_test

import data.policy.systems
import rego.v2

job := {"systems": [
	{"id": "fan", "kind": "sub-slab", "powered_by": "fan"},
	{"id": "stack", "kind": "drain-tile", "powered_by": "passive"},
	{"id": "air", "kind": "pressurization", "powered_by": "fan"},
	{"id": "blank"},
]}

test_with_fan if {
	got := systems.with_fan with input as job
	got == {"fan"}
}

test_without_outlet_is_only_what_is_recorded if {
	got := systems.without_outlet with input as job
	{id | some [id, _] in got} == {"air"}
}

test_without_fan if {
	got := systems.without_fan with input as job
	{id | some [id, _] in got} == {"stack", "air"}
}

test_unsaid if {
	got := systems.unsaid with input as job
	got == {["blank", ["systems", 3, "kind"]], ["blank", ["systems", 3, "powered_by"]]}
}

test_none_with_fan if {
	systems.none_with_fan with input as {"systems": [{"id": "s", "kind": "sealing-only", "powered_by": "passive"}]}
}

test_one_with_fan if not systems.none_with_fan with input as job

test_one_unknown if not systems.none_with_fan with input as {"systems": [{"id": "blank"}]}

test_systems_not_recorded if not systems.none_with_fan with input as {}

powered(kinds) := {"systems": [{"id": kind, "powered_by": kind} | some kind in kinds]}

test_no_fan if systems.no_fan with input as powered(["passive", "rough-in"])

test_a_fan if {
	systems.fan_drives with input as powered(["fan"])
	not systems.no_fan with input as powered(["fan"])
}

test_an_unknown_drive_is_no_absence_of_a_fan if not systems.no_fan with input as {"systems": [{"id": "s"}]}

test_only_roughed_in if {
	systems.only_roughed_in with input as powered(["rough-in"])
	not systems.only_roughed_in with input as powered([])
	not systems.only_roughed_in with input as {"systems": [{"id": "s"}]}
}

test_built if {
	systems.built with input as powered(["passive"])
	not systems.built with input as powered(["rough-in"])
}

test_unsaid_power if {
	systems.unsaid_power == {["systems"]} with input as {}
	got := systems.unsaid_power with input as {"systems": [{"id": "s"}]}
	got == {["systems", 0, "powered_by"]}
}
