package policy.testing.duplicates_contradict_test

import data.policy.lib
import data.policy.testing.duplicates_contradict as rule
import rego.v2

# EPA 402-R-93-003 3.2.2.3 (from memory): one over 4 pCi/L (148 Bq/m3), the other
# under it, and the larger more than twice the smaller: test again.
profile := {"testing": {"duplicates_contradict": {"level": {"si": 148}, "ratio": {"si": 2}}}}

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

test_met_on_one_side if verdict(job(100, 20, {"ratio": {"si": 5}})) == "met"

test_met_at_exactly_twice if verdict(job(200, 100, {"ratio": {"si": 2}})) == "met"

test_deficient_at_more_than_twice if {
	verdict(job(200, 90, {"ratio": {"si": 2.22}})) == "deficient"
	verdict(job(90, 200, {"ratio": {"si": 2.22}})) == "deficient"
}

test_the_level_itself_is_not_over if verdict(job(148, 20, {"ratio": {"si": 7.4}})) == "met"

# Worked case 21: 4.4 and 3.5 pCi/L straddle, but not by that much.
test_met_in_worked_case_21 if verdict(job(162.8, 129.5, {"ratio": {"si": 1.257}})) == "met"

test_undetermined_when_the_smaller_is_zero if {
	verdict(job(200, 0, {"ratio": {"undetermined": ["/measurements/tests/1/result"]}})) == "undetermined"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"measurements": {"tests": []}, "derived": {"duplicates": [{"id": "a/b", "at": ""}]}} with data.profile as profile
	got == {
		["a/b", ["job", "contaminant"]],
		["a/b", ["derived", "duplicates", 0, "ratio"]],
	}
}
