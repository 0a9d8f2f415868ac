package policy.physics.area_per_suction_point_test

import data.policy.lib
import data.policy.physics.area_per_suction_point as rule
import rego.v2

# common practice, upper ends: 2,500 ft2 (232.26 m2) on gravel, 1,200 ft2 (111.48
# m2) on poor fill, 500 ft2 (46.45 m2) on tight soil; a measured field comes first.
profile := {"physics": {"area_per_suction_point": {
	"reach": {"si": 0.9}, "kinds": {"any_of": ["sub-slab"]},
	"open_fills": {"any_of": ["gravel"]}, "open_area": {"si": 232.2576},
	"poor_fills": {"any_of": ["sand"]}, "poor_area": {"si": 111.483648},
	"tight_fills": {"any_of": ["clay"]}, "tight_area": {"si": 46.45152},
}}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

record(fills, area) := {
	"house": {"foundations": [{"id": concat("", ["a", format_int(i, 10)]), "fill": fill} | some i, fill in fills]},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "foundations": [concat("", ["a", format_int(i, 10)]) | some i, _ in fills]}],
	"derived": {"systems": [{"id": "s", "at": "/systems/0", "area_per_suction_point": {"si": area}}]},
}

test_met_at_the_limit_on_gravel if verdict(record(["gravel"], 232.2576)) == "met"

test_deficient_on_gravel if verdict(record(["gravel"], 233)) == "deficient"

test_met_at_the_limit_on_sand if verdict(record(["sand", "gravel"], 111.483648)) == "met"

test_deficient_on_sand if verdict(record(["gravel", "sand"], 112)) == "deficient"

test_met_at_the_limit_on_clay if verdict(record(["clay", "gravel"], 46.45152)) == "met"

test_deficient_on_clay if verdict(record(["gravel", "sand", "clay"], 47)) == "deficient"

reaching(share) := object.union(record(["clay"], 100), {
	"diagnostics": {"communication_tests": [{"id": "t", "foundation": "a0", "holes": [{"id": "h", "pressure": {"si": -4}}]}]},
	"derived": {"communication": [{"id": "t", "at": "/diagnostics/communication_tests/0", "coverage": {"si": share}}]},
})

test_met_when_shown if verdict(reaching(0.9)) == "met"

test_deficient_when_shown_for_a_part if verdict(reaching(0.89)) == "deficient"

test_not_applicable_to_membranes if verdict({"systems": [{"id": "s", "kind": "sub-membrane"}]}) == "not-applicable"

test_unrecorded_without_the_fill if {
	verdict(object.union(record(["gravel"], 100), {"house": {"foundations": [{"id": "a0"}]}})) == "unrecorded"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "derived": {"systems": [{"id": "s", "at": "/systems/0"}]}} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "foundations"]],
		["s", ["derived", "systems", 0, "area_per_suction_point"]],
	}
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}
