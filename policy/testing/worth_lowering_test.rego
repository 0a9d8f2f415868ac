package policy.testing.worth_lowering_test

import data.policy.lib
import data.policy.testing.worth_lowering as rule
import rego.v2

# EPA 402/K-12/002 and ANSI/AARST MAH 2019 7.1: consider action from 2 to 4 pCi/L
# (74 to 148 Bq/m3).
profile := {"testing": {"worth_lowering": {"consider": {"si": 74}, "action": {"si": 148}}}}

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

test_met_below if verdict({}, {"after": {"si": 70.3}}) == "met"

test_deficient_at_exactly_two if verdict({}, {"after": {"si": 74}}) == "deficient"

# Worked case 31: 3.1 pCi/L earns the remark on 2 to 4.
test_deficient_at_3_1 if verdict({}, {"after": {"si": 114.7}}) == "deficient"

test_at_the_action_level_another_requirement_speaks if verdict({}, {"after": {"si": 148}}) == "not-applicable"

test_says_what_is_missing if {
	got := rule.missing with input as {"measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["measurements", ["measurements", "tests", 0, "phase"]],
		["measurements", ["measurements", "tests", 0, "blank"]],
		["measurements", ["job", "contaminant"]],
		["measurements", ["derived", "radon", "after"]],
	}
}
