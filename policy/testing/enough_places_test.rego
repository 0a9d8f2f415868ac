package policy.testing.enough_places_test

import data.policy.lib
import data.policy.testing.enough_places as rule
import rego.v2

# 32 Ill. Adm. Code 422.130(a)(1)(C): one place for every 2,000 sq ft (185.80608 m2).
profile := {"testing": {"enough_places": {"each": {"si": 185.80608}}}}

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

test_met_at_exactly_2000_square_feet if verdict({}, {"area_per_place": {"si": 185.80608}}) == "met"

test_deficient_with_one_place_in_a_larger_level if verdict({}, {"area_per_place": {"si": 190}}) == "deficient"

test_says_what_is_missing if {
	got := rule.missing with input as {"measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["measurements", ["measurements", "tests", 0, "phase"]],
		["measurements", ["measurements", "tests", 0, "blank"]],
		["measurements", ["job", "contaminant"]],
		["measurements", ["derived", "radon", "area_per_place"]],
	}
}
