package policy.papers.package_permits_test

import data.policy.lib
import data.policy.papers.package_permits as rule
import rego.v2

# EPA RMS 1994 18.3, first item: copies of permits.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(permits, said) := {"job": {"permits": permits}, "closeout": {"package": {"permits": said}}}

one := [{"id": "el", "status": "closed"}]

test_met if verdict(record(one, true)) == "met"

test_deficient if verdict(record(one, false)) == "deficient"

test_not_applicable_without_permits if verdict(record([], true)) == "not-applicable"

test_not_applicable_where_none_is_required if verdict(record([{"id": "el", "status": "not-required"}], false)) == "not-applicable"

test_unrecorded_when_it_is_not_said_whether_one_is_needed if verdict(record([{"id": "el"}], true)) == "unrecorded"

test_unrecorded if verdict({"job": {"permits": one}}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {["closeout", ["job", "permits"]], ["closeout", ["closeout", "package", "permits"]]}
}

test_says_which_status_is_missing if {
	got := rule.missing with input as record([{"id": "el"}], true)
	got == {["closeout", ["job", "permits", 0, "status"]]}
}
