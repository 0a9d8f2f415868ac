package policy.testing.vapor_waits_test

import data.policy.lib
import data.policy.testing.vapor_waits as rule
import rego.v2

# SGM-SF 2017 (12/20) A-3.2: two weeks or more after the start.
profile := {"testing": {"vapor_waits": {"lead": {"si": 1209600}, "contaminants": {"any_of": ["chemical-vapor", "both"]}}}}

job(contaminant, values) := {"job": {"contaminant": contaminant}, "derived": {"order": values}}

verdict(job) := v if v := lib.verdict(rule, "measurements") with input as job with data.profile as profile

waited(seconds) := {"fan_start_before_vapor_sample": {"si": seconds}}

test_met_at_exactly_two_weeks if verdict(job("chemical-vapor", waited(1209600))) == "met"

test_deficient_a_day_earlier if verdict(job("both", waited(1123200))) == "deficient"

test_unrecorded if verdict(job("chemical-vapor", {})) == "unrecorded"

test_not_applicable_to_radon if verdict(job("radon", waited(0))) == "not-applicable"

test_says_what_is_missing if {
	got := rule.missing with input as {} with data.profile as profile
	got == {
		["measurements", ["job", "contaminant"]],
		["measurements", ["derived", "order", "fan_start_before_vapor_sample"]],
	}
}
