package policy.testing.world_reference_level_test

import data.policy.lib
import data.policy.testing.world_reference_level as rule
import rego.v2

# WHO Handbook on Indoor Radon 2009: 100 Bq/m3.
profile := {"testing": {"world_reference_level": {"level": {"si": 100}}}}

job(about, values) := {
	"job": {"contaminant": "radon"},
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "continuous-monitor"}, about)]},
	"derived": {"radon": values},
}

verdict(about, values) := v if v := lib.verdict(rule, "measurements") with input as job(about, values) with data.profile as profile

test_nothing_to_judge_without_a_test_after if verdict({"phase": "before"}, {}) == "not-applicable"

test_not_applicable_to_chemical_vapor if {
	other := object.union(job({}, {}), {"job": {"contaminant": "chemical-vapor"}})
	"not-applicable" == lib.verdict(rule, "measurements") with input as other with data.profile as profile
}

test_unrecorded if verdict({}, {}) == "unrecorded"

test_met_at_exactly_100 if verdict({}, {"after": {"si": 100}}) == "met"

# Worked case 31: 115 Bq/m3 is over it.
test_deficient_at_115 if verdict({}, {"after": {"si": 115}}) == "deficient"

test_says_what_is_missing if {
	got := rule.missing with input as {"measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["measurements", ["measurements", "tests", 0, "phase"]],
		["measurements", ["measurements", "tests", 0, "blank"]],
		["measurements", ["job", "contaminant"]],
		["measurements", ["derived", "radon", "after"]],
	}
}
