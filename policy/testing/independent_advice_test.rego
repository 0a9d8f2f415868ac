package policy.testing.independent_advice_test

import data.policy.lib
import data.policy.testing.independent_advice as rule
import rego.v2

# EPA RMS 1994 17.4 (from memory) and EPA consumer guide: an independent test is
# advised and a copy of the report asked for.
profile := {}

job := {"job": {"contaminant": "radon"}, "measurements": {"independent_test_advised": true}, "closeout": {"result_copy_received": true}}

verdict(job) := v if v := lib.verdict(rule, "measurements") with input as job with data.profile as profile

test_met if verdict(job) == "met"

test_deficient_when_not_advised if verdict(object.union(job, {"measurements": {"independent_test_advised": false}})) == "deficient"

test_deficient_without_a_copy if verdict(object.union(job, {"closeout": {"result_copy_received": false}})) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"

test_not_applicable_to_chemical_vapor if {
	verdict(object.union(job, {"job": {"contaminant": "chemical-vapor"}})) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {
		["measurements", ["job", "contaminant"]],
		["measurements", ["measurements", "independent_test_advised"]],
		["measurements", ["closeout", "result_copy_received"]],
	}
}
