package policy.exhaust.clearance_to_openings_test

import data.policy.exhaust.clearance_to_openings as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 14.2.8(3): 10 ft from openings less than 2 ft below the outlet,
# systems with a fan; says nothing of panes that do not open or of chimneys.
profile := {"exhaust": {"clearance_to_openings": {
	"minimum": {"si": 3.048}, "waiver_drop": {"si": 0.6096},
	"skipped_panes": {"any_of": []},
	"skipped_kinds": {"any_of": []},
	"not_for": {"any_of": ["passive", "rough-in"]},
}}}

# 25 Pa. Code 240.308(b)(4): operable openings only, no chimneys, passive
# systems too.
pennsylvania := {"exhaust": {"clearance_to_openings": {
	"minimum": {"si": 3.048}, "waiver_drop": {"si": 0.6096},
	"skipped_panes": {"any_of": ["fixed"]},
	"skipped_kinds": {"any_of": ["chimney"]},
	"not_for": {"any_of": ["rough-in"]},
}}}

system(kind, power) := {"id": "s", "kind": kind, "powered_by": power, "discharge": {}}

job(opening, system) := {
	"house": {"openings": [{"id": "win"}]},
	"systems": [system],
	"derived": {"clearances": [object.union(
		{"id": "s/win", "at": "/house/openings/0", "system": "s", "opening": "win"},
		opening,
	)]},
}

window(distance, drop) := object.union(plain, {"distance": {"si": distance}, "drop": {"si": drop}})

plain := {"building": "own", "into_conditioned_space": true, "operable": true, "kind": "window"}

with_fan := system("drain-tile", "fan")

verdict(opening) := v if v := lib.verdict(rule, "s/win") with input as job(opening, with_fan) with data.profile as profile

verdict_pa(opening) := v if v := lib.verdict(rule, "s/win") with input as job(opening, with_fan) with data.profile as pennsylvania

test_met_at_exactly_ten_feet if verdict(window(3.048, 0)) == "met"

test_deficient_at_three_metres if verdict(window(3, 0)) == "deficient"

# Worked case 1: 8 ft to the side, top 1.5 ft below the outlet; 8.14 ft.
test_case_1 if verdict(window(2.481072, 0.4572)) == "deficient"

# Worked case 3: 8 ft to the side, 3 ft above the outlet; 8.54 ft. Higher
# openings are "less than 2 ft below" as well.
test_case_3 if verdict(window(2.602992, -0.9144)) == "deficient"

# Worked case 7: 7 ft through the wall, 10.5 ft round the corner.
test_case_7 if {
	opening := object.union(window(3.2004, 0), {"straight_distance": {"si": 2.1336}})
	verdict(opening) == "met"
	verdict_pa(opening) == "met"
}

test_met_at_exactly_two_feet_below if verdict(window(0.5, 0.6096)) == "met"

test_deficient_just_less_than_two_feet_below if verdict(window(0.5, 0.6)) == "deficient"

test_unrecorded_without_numbers if verdict(plain) == "unrecorded"

test_unrecorded_near_without_a_height if {
	verdict(object.union(plain, {"distance": {"si": 2}})) == "unrecorded"
}

test_met_by_height_without_a_distance if verdict(object.union(plain, {"drop": {"si": 1}})) == "met"

test_unrecorded_without_the_building if verdict(object.remove(window(4, 0), ["building"])) == "unrecorded"

test_fixed_pane_counts_where_nothing_is_said if {
	verdict(object.union(window(2, 0), {"operable": false})) == "deficient"
}

test_fixed_pane_does_not_count_in_pennsylvania if {
	verdict_pa(object.union(window(2, 0), {"operable": false})) == "not-applicable"
}

test_unknown_pane_is_unrecorded_in_pennsylvania if {
	verdict_pa(object.remove(window(2, 0), ["operable"])) == "unrecorded"
}

# An air intake stands open whatever the record says of it.
test_intake_counts_in_pennsylvania if {
	verdict_pa(object.union(window(2, 0), {"kind": "intake", "operable": false})) == "deficient"
}

test_chimney_counts_where_nothing_is_said if {
	verdict(object.union(window(2, 0), {"kind": "chimney"})) == "deficient"
}

test_chimney_does_not_count_in_pennsylvania if {
	verdict_pa(object.union(window(2, 0), {"kind": "chimney"})) == "not-applicable"
}

test_unknown_kind_is_unrecorded_in_pennsylvania if {
	verdict_pa(object.remove(window(4, 0), ["kind"])) == "unrecorded"
}

test_neighbors_have_their_own_requirement if {
	verdict(object.union(window(2, 0), {"building": "adjacent"})) == "not-applicable"
}

test_attic_vents_do_not_count if {
	verdict(object.union(window(2, 0), {"into_conditioned_space": false})) == "not-applicable"
}

test_passive_systems if {
	passive := job(window(2, 0), system("sub-slab", "passive"))
	"not-applicable" == lib.verdict(rule, "s/win") with input as passive with data.profile as profile
	"deficient" == lib.verdict(rule, "s/win") with input as passive with data.profile as pennsylvania
}

test_not_applicable_to_ventilation if {
	"not-applicable" == lib.verdict(rule, "s/win") with data.profile as profile
		with input as job(window(2, 0), system("heat-recovery-ventilation", "fan"))
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_unrecorded_without_openings if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [with_fan]} with data.profile as profile
}

test_no_openings_needed_without_an_outlet if {
	"not-applicable" == lib.verdict(rule, "s") with data.profile as profile
		with input as {"systems": [system("sealing-only", "passive")]}
}

test_says_what_is_missing if {
	blank := {
		"house": {"openings": [{"id": "win"}]},
		"systems": [{"id": "s", "discharge": {}}],
		"derived": {"clearances": [{"id": "s/win", "at": "", "system": "s", "opening": "win"}]},
	}
	got := rule.missing with input as blank with data.profile as pennsylvania
	got == {
		["s/win", ["systems", 0, "kind"]],
		["s/win", ["systems", 0, "powered_by"]],
		["s/win", ["house", "openings", 0, "building"]],
		["s/win", ["house", "openings", 0, "into_conditioned_space"]],
		["s/win", ["house", "openings", 0, "operable"]],
		["s/win", ["house", "openings", 0, "kind"]],
		["s/win", ["derived", "clearances", 0, "distance"]],
		["s/win", ["derived", "clearances", 0, "drop"]],
	}
}
