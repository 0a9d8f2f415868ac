package policy.testing.below_action_level_test

import data.policy.lib
import data.policy.testing.below_action_level as rule
import rego.v2

# EPA 402/K-12/002 and ANSI/AARST MAH 2019 7.1: fix at 4.0 pCi/L (148 Bq/m3) or more.
profile := {"testing": {"below_action_level": {"level": {"si": 148}}}}

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

# ANSI/AARST MAH 2019 8.5.2(b): 3.9 is the last value that reports below 4.0.
test_met_just_below if verdict({}, {"after": {"si": 144.3}}) == "met"

# MAH 8.5.2(b) and worked case 21: 3.95 reports as 4.0 and counts as over.
test_deficient_at_exactly_four if verdict({}, {"after": {"si": 148}}) == "deficient"

test_deficient_above if verdict({}, {"after": {"si": 222}}) == "deficient"

# Worked case 31: 3.1 pCi/L is below the level of the United States.
test_met_at_3_1 if verdict({}, {"after": {"si": 114.7}}) == "met"

test_says_what_is_missing if {
	got := rule.missing with input as {"measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["measurements", ["measurements", "tests", 0, "phase"]],
		["measurements", ["measurements", "tests", 0, "blank"]],
		["measurements", ["job", "contaminant"]],
		["measurements", ["derived", "radon", "after"]],
	}
}
