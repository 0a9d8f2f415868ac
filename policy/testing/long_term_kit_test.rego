package policy.testing.long_term_kit_test

import data.policy.lib
import data.policy.testing.long_term_kit as rule
import rego.v2

# ANSI/AARST CCAH 2020 801.2: a long-term kit for each dwelling of a new building.
profile := {}

job := {"job": {"contaminant": "radon"}, "house": {"new_construction": true}, "measurements": {"long_term_kit_given": true}}

verdict(job) := v if v := lib.verdict(rule, "measurements") with input as job with data.profile as profile

test_met if verdict(job) == "met"

test_deficient if verdict(object.union(job, {"measurements": {"long_term_kit_given": false}})) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"

test_unrecorded_without_the_age_of_the_house if verdict(object.remove(job, ["house"])) == "unrecorded"

test_not_applicable_to_older_houses if verdict(object.union(job, {"house": {"new_construction": false}})) == "not-applicable"

test_not_applicable_to_chemical_vapor if {
	verdict(object.union(job, {"job": {"contaminant": "chemical-vapor"}})) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {
		["measurements", ["job", "contaminant"]],
		["measurements", ["house", "new_construction"]],
		["measurements", ["measurements", "long_term_kit_given"]],
	}
}
