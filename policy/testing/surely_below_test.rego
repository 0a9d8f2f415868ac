package policy.testing.surely_below_test

import data.policy.lib
import data.policy.testing.surely_below as rule
import rego.v2

# common practice: one-sided 95 % bounds against 4.0 pCi/L.
profile := {"testing": {"surely_below": {"level": {"si": 148}}}}

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

bounds(lower, upper) := {"after_lower_bound": {"si": lower}, "after_upper_bound": {"si": upper}}

test_met if verdict({}, bounds(20, 40)) == "met"

# 3.6 pCi/L with 10 %: the bound is 4.19 pCi/L.
test_too_close_to_call if verdict({}, bounds(111.3, 155.1)) == "undetermined"

test_too_close_with_the_bound_on_the_level if verdict({}, bounds(100, 148)) == "undetermined"

test_deficient_when_surely_over if verdict({}, bounds(148, 200)) == "deficient"

test_unrecorded_without_the_lower_bound if verdict({}, {"after_upper_bound": {"si": 155}}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["measurements", ["measurements", "tests", 0, "phase"]],
		["measurements", ["measurements", "tests", 0, "blank"]],
		["measurements", ["job", "contaminant"]],
		["measurements", ["derived", "radon", "after_upper_bound"]],
		["measurements", ["derived", "radon", "after_lower_bound"]],
	}
}
