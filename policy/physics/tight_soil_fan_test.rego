package policy.physics.tight_soil_fan_test

import data.policy.lib
import data.policy.physics.tight_soil_fan as rule
import rego.v2

# common practice: fans made for tight soil shut off at 3 inH2O (747.27 Pa) or more.
profile := {"physics": {"tight_soil_fan": {
	"minimum": {"si": 747.26727}, "fills": {"any_of": ["clay"]},
	"reach": {"si": 0.9}, "kinds": {"any_of": ["sub-slab"]},
}}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

record(fill, shutoff) := {
	"house": {"altitude": {"si": 300}, "foundations": [{"id": "slab", "fill": fill}]},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "foundations": ["slab"]}],
	"derived": {"systems": [{"id": "s", "at": "/systems/0", "shutoff_pressure": shutoff}]},
}

shown(system) := object.union(record("clay", {"si": 400}), {
	"diagnostics": {"communication_tests": [{
		"id": "t", "foundation": "slab", "system": system,
		"holes": [{"id": "h", "pressure": {"si": -4}}],
	}]},
	"derived": {"communication": [{"id": "t", "at": "/diagnostics/communication_tests/0", "coverage": {"si": 0.95}}]},
})

test_met_at_the_limit if verdict(record("clay", {"si": 747.26727})) == "met"

test_deficient if verdict(record("clay", {"si": 400})) == "deficient"

test_not_applicable_on_gravel if verdict(record("gravel", {"si": 400})) == "not-applicable"

test_not_applicable_when_its_own_fan_reaches if verdict(shown("s")) == "not-applicable"

# A test with a strong vacuum cleaner says nothing of the fan.
test_deficient_when_another_fan_reached if verdict(shown("other")) == "deficient"

test_not_applicable_to_membranes if verdict({"systems": [{"id": "s", "kind": "sub-membrane", "powered_by": "fan"}]}) == "not-applicable"

test_unrecorded_without_a_curve if verdict(record("clay", {})) == "unrecorded"

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
		["s", ["house", "altitude"]],
		["s", ["derived", "systems", 0, "shutoff_pressure"]],
	}
}
