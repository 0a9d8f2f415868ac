package policy.testing.next_test_dated_test

import data.policy.lib
import data.policy.testing.next_test_dated as rule
import rego.v2

# common practice: the day that follows from the advice of two years is set.
profile := {}

# 2028-03-21
due := {"si": 1837209600}

job := {"job": {"contaminant": "radon"}, "closeout": {"retest_due": due}, "derived": {"retest_due": due}}

verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job with data.profile as profile

test_met_on_the_day if verdict(job) == "met"

test_deficient_a_day_later if verdict(object.union(job, {"closeout": {"retest_due": {"si": 1837296000}}})) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"

test_nothing_to_count_from_without_a_test_after if {
	verdict({"job": {"contaminant": "radon"}, "measurements": {"tests": []}}) == "not-applicable"
}

test_not_applicable_to_chemical_vapor if {
	verdict(object.union(job, {"job": {"contaminant": "chemical-vapor"}})) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {
		["closeout", ["job", "contaminant"]],
		["closeout", ["closeout", "retest_due"]],
		["closeout", ["derived", "retest_due"]],
	}
}
