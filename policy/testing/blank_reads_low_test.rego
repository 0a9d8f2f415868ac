package policy.testing.blank_reads_low_test

import data.policy.lib
import data.policy.testing.blank_reads_low as rule
import rego.v2

# EPA 402-R-92-004 (from memory): field blanks go along; compared with the lowest
# level that can be reported, common practice.
profile := {}

job(about) := {
	"job": {"contaminant": "radon"},
	"measurements": {"tests": [object.union({"id": "t", "device": "charcoal", "blank": true}, about)]},
}

verdict(job) := v if v := lib.verdict(rule, "t") with input as job with data.profile as profile

test_met if verdict(job({"below_detection": true})) == "met"

test_deficient if verdict(job({"below_detection": false})) == "deficient"

test_unrecorded if verdict(job({})) == "unrecorded"

test_other_tests_are_no_blanks if verdict(job({"blank": false})) == "not-applicable"

test_a_monitor_is_no_blank if verdict(job({"device": "continuous-monitor"})) == "not-applicable"

test_not_applicable_to_chemical_vapor if {
	verdict(object.union(job({}), {"job": {"contaminant": "chemical-vapor"}})) == "not-applicable"
}

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "measurements") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"measurements": {"tests": [{"id": "t"}, {"id": "u", "blank": true}]}}
	got == {
		["t", ["job", "contaminant"]],
		["u", ["job", "contaminant"]],
		["t", ["measurements", "tests", 0, "device"]],
		["t", ["measurements", "tests", 0, "blank"]],
		["u", ["measurements", "tests", 1, "device"]],
		["u", ["measurements", "tests", 1, "below_detection"]],
	}
}
