package policy.testing.placement_test

import data.policy.lib
import data.policy.testing.placement as rule
import rego.v2

# 25 Pa. Code 240.310(a)(1) and 32 Ill. Adm. Code 422.130(a)(1)(D): 20 in to 6 ft
# above the floor; 3 ft from outside doors, windows and duct outlets; 1 ft from
# outside walls; 4 in from other objects; 4 ft from heat and sun; 7 ft from a sump.
profile := {"testing": {"placement": {
	"lowest": {"si": 0.508}, "highest": {"si": 1.8288}, "opening": {"si": 0.9144}, "wall": {"si": 0.3048},
	"object": {"si": 0.1016}, "heat": {"si": 1.2192}, "sump": {"si": 2.1336},
}}}

job(about, values) := {
	"job": {"contaminant": "radon"},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "charcoal", "blank": false, "kind": "short-term"}, about)]},
	"derived": {"tests": [object.union({"id": "t", "at": "/measurements/tests/0"}, values)]},
}

verdict(about, values) := v if v := lib.verdict(rule, "t") with input as job(about, values) with data.profile as profile

at_the_limits := {
	"height_above_floor": {"si": 0.508}, "to_exterior_opening": {"si": 0.9144}, "to_exterior_wall": {"si": 0.3048},
	"to_objects": {"si": 0.1016}, "to_heat": {"si": 1.2192}, "to_sump": {"si": 2.1336},
}

changed(field, si) := object.union(at_the_limits, {field: {"si": si}})

test_met_at_exactly_all_limits if {
	verdict(at_the_limits, {}) == "met"
	verdict(changed("height_above_floor", 1.8288), {}) == "met"
}

test_deficient_on_the_floor if verdict(changed("height_above_floor", 0), {}) == "deficient"

test_deficient_above_six_feet if verdict(changed("height_above_floor", 1.85), {}) == "deficient"

test_deficient_beside_a_window if verdict(changed("to_exterior_opening", 0.9), {}) == "deficient"

test_deficient_at_the_outside_wall if verdict(changed("to_exterior_wall", 0.3), {}) == "deficient"

test_deficient_against_an_object if verdict(changed("to_objects", 0.1), {}) == "deficient"

test_deficient_in_the_sun if verdict(changed("to_heat", 1.2), {}) == "deficient"

test_deficient_beside_the_sump if verdict(changed("to_sump", 2.1), {}) == "deficient"

test_no_distance_needed_without_a_sump if {
	no_sump := object.union(job(object.remove(at_the_limits, ["to_sump"]), {}), {"entry_routes": [{"id": "r", "kind": "crack"}]})
	"met" == lib.verdict(rule, "t") with input as no_sump with data.profile as profile
}

test_a_route_of_unknown_kind_may_be_a_sump if {
	vague := object.union(job(object.remove(at_the_limits, ["to_sump"]), {}), {"entry_routes": [{"id": "r"}]})
	"unrecorded" == lib.verdict(rule, "t") with input as vague with data.profile as profile
}

test_unrecorded if verdict(object.remove(at_the_limits, ["to_heat"]), {}) == "unrecorded"

test_a_test_before_the_work_is_put_aside if verdict({"phase": "before"}, {}) == "not-applicable"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "measurements") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["t", ["measurements", "tests", 0, "phase"]],
		["t", ["measurements", "tests", 0, "blank"]],
		["t", ["job", "contaminant"]],
		["t", ["measurements", "tests", 0, "height_above_floor"]],
		["t", ["measurements", "tests", 0, "to_exterior_opening"]],
		["t", ["measurements", "tests", 0, "to_exterior_wall"]],
		["t", ["measurements", "tests", 0, "to_objects"]],
		["t", ["measurements", "tests", 0, "to_heat"]],
		["t", ["measurements", "tests", 0, "to_sump"]],
	}
}
