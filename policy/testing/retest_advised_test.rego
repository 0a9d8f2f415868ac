package policy.testing.retest_advised_test

import data.policy.lib
import data.policy.testing.retest_advised as rule
import rego.v2

# ANSI/AARST MAH 2019 8.5.9.2; SGM-SF 2017 (12/20) 8.4.2.1; EPA RMS 1994 17.5 (from
# memory): every two years or sooner, and at alteration or sale.
profile := {"testing": {"retest_advised": {"interval": {"si": 63072000}}}}

job := {"job": {"contaminant": "radon"}, "closeout": {"package": {"retest_interval": {"si": 63072000}, "retest_at_sale": true}}}

with_package(changes) := {"job": {"contaminant": "radon"}, "closeout": {"package": object.union(job.closeout.package, changes)}}

verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job with data.profile as profile

test_met_at_exactly_two_years if verdict(job) == "met"

test_deficient_at_three_years if verdict(with_package({"retest_interval": {"si": 94608000}})) == "deficient"

test_deficient_without_sale if verdict(with_package({"retest_at_sale": false})) == "deficient"

test_unrecorded if {
	verdict({}) == "unrecorded"
	verdict({"job": {"contaminant": "radon"}, "closeout": {"package": {"retest_at_sale": true}}}) == "unrecorded"
}

test_not_applicable_to_chemical_vapor if {
	verdict(object.union(job, {"job": {"contaminant": "chemical-vapor"}})) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {} with data.profile as profile
	got == {
		["closeout", ["job", "contaminant"]],
		["closeout", ["closeout", "package", "retest_interval"]],
		["closeout", ["closeout", "package", "retest_at_sale"]],
	}
}
