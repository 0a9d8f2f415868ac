package policy.physics.large_footprint_test

import data.policy.lib
import data.policy.physics.large_footprint as rule
import rego.v2

# common practice: over 2,500 ft2 (232.26 m2) with gravel. ANSI/AARST RRNC 2020
# Table 302.3 has 3-in pipe up to that area in new houses.
profile := {"physics": {"large_footprint": {
	"area": {"si": 232.2576}, "size": {"si": 0.1016}, "fills": {"any_of": ["gravel"]},
	"classes": {"any_of": ["high-flow"]}, "kinds": {"any_of": ["sub-slab"]},
}}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

record(area, fill, class, bore) := {
	"house": {"foundations": [{"id": "slab", "fill": fill}]},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "foundations": ["slab"], "fan": {"class": class}}],
	"derived": {"systems": [{"id": "s", "at": "/systems/0", "area_treated": {"si": area}, "smallest_bore": {"si": bore}}]},
}

test_met if verdict(record(300, "gravel", "high-flow", 0.1016)) == "met"

test_deficient_with_a_usual_fan if verdict(record(300, "gravel", "general", 0.1016)) == "deficient"

test_deficient_with_narrow_pipe if verdict(record(300, "gravel", "high-flow", 0.0762)) == "deficient"

test_not_applicable_at_exactly_2500_square_feet if verdict(record(232.2576, "gravel", "general", 0.0762)) == "not-applicable"

test_not_applicable_on_clay if verdict(record(300, "clay", "general", 0.0762)) == "not-applicable"

test_not_applicable_to_membranes if {
	verdict({"systems": [{"id": "s", "kind": "sub-membrane", "powered_by": "fan"}]}) == "not-applicable"
}

test_unrecorded_without_the_fill if {
	verdict(object.union(record(300, "gravel", "high-flow", 0.1016), {"house": {"foundations": [{"id": "slab"}]}})) == "unrecorded"
}

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "derived": {"systems": [{"id": "s", "at": "/systems/0"}]}} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "foundations"]],
		["s", ["systems", 0, "fan", "class"]],
		["s", ["derived", "systems", 0, "area_treated"]],
		["s", ["derived", "systems", 0, "smallest_bore"]],
	}
}
