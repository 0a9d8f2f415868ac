package policy.special.built_level_test

import data.policy.lib
import data.policy.special.built_level as rule
import rego.v2

# CAN/CGSB-149.11-2019 (from memory, trade summary): three levels, rough-in, full passive
# stack, full active system.
profile := {"special": {"built_level": {"not_for": {"any_of": ["existing"]}}}}

built(driven, level) := {
	"house": {"new_construction": true},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": driven, "rough_in": {"level": level}}],
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_rough_in if verdict(built("rough-in", "rough-in")) == "met"

test_met_stack if verdict(built("passive", "passive-stack")) == "met"

test_met_active if verdict(built("fan", "active")) == "met"

test_deficient if verdict(built("rough-in", "passive-stack")) == "deficient"

test_unrecorded if {
	verdict({"house": {"new_construction": true}, "systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}]}) == "unrecorded"
}

test_unrecorded_drive if {
	verdict({"house": {"new_construction": true}, "systems": [{"id": "s", "kind": "sub-slab", "rough_in": {"level": "active"}}]}) == "unrecorded"
}

test_unrecorded_house if verdict(object.remove(built("fan", "active"), ["house"])) == "unrecorded"

test_not_applicable_to_a_house_that_stands if {
	verdict(object.union(built("fan", "active"), {"house": {"new_construction": false}})) == "not-applicable"
}

test_not_applicable_to_ventilation if {
	verdict({"house": {"new_construction": true}, "systems": [{"id": "s", "kind": "heat-recovery-ventilation"}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["house", "new_construction"]],
		["s", ["systems", 0, "rough_in", "level"]],
	}
}
