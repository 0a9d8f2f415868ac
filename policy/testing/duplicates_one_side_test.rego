package policy.testing.duplicates_one_side_test

import data.policy.lib
import data.policy.testing.duplicates_one_side as rule
import rego.v2

# ANSI/AARST MAH 2019 7.2.1, 8.5.2(d): the plain mean decides only when both lie on
# the same side of 4.0 pCi/L (148 Bq/m3).
profile := {"testing": {"duplicates_one_side": {"level": {"si": 148}}}}

job(a, b, values) := {
	"job": {"contaminant": "radon"},
	"measurements": {"tests": [
		{"id": "a", "result": {"si": a}},
		{"id": "b", "duplicate_of": "a", "result": {"si": b}},
	]},
	"derived": {"duplicates": [object.union({"id": "a/b", "at": ""}, values)]},
}

verdict(job) := v if v := lib.verdict(rule, "a/b") with input as job with data.profile as profile

test_not_applicable_to_chemical_vapor if {
	verdict(object.union(job(100, 200, {}), {"job": {"contaminant": "chemical-vapor"}})) == "not-applicable"
}

test_unrecorded_without_a_result if {
	half := {
		"job": {"contaminant": "radon"},
		"measurements": {"tests": [{"id": "a", "result": {"si": 100}}, {"id": "b", "duplicate_of": "a"}]},
		"derived": {"duplicates": [{"id": "a/b", "at": ""}]},
	}
	verdict(half) == "unrecorded"
}

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "measurements") with input as {} with data.profile as profile
}

test_met_when_both_are_under if verdict(job(144.3, 100, {})) == "met"

test_met_when_both_are_over if verdict(job(148, 200, {})) == "met"

# Worked case 21: 4.4 and 3.5 pCi/L straddle the level and are not averaged.
test_deficient_when_they_straddle if {
	verdict(job(162.8, 129.5, {})) == "deficient"
	verdict(job(129.5, 162.8, {})) == "deficient"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"measurements": {"tests": []}, "derived": {"duplicates": [{"id": "a/b", "at": ""}]}} with data.profile as profile
	got == {
		["a/b", ["job", "contaminant"]],
		["a/b", ["derived", "duplicates", 0, "mean"]],
	}
}
