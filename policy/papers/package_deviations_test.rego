package policy.papers.package_deviations_test

import data.policy.lib
import data.policy.papers.package_deviations as rule
import rego.v2

# EPA RMS 1994 18.3(6), from memory: departures from the standard.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(list, said) := {"closeout": {"deviations": list, "package": {"deviations": said}}}

one := [{"id": "d", "what": "Outlet 9 ft from a fixed pane", "reason": "The pane does not open"}]

test_met if verdict(record(one, true)) == "met"

test_deficient if verdict(record(one, false)) == "deficient"

test_not_applicable_when_there_are_none if verdict(record([], false)) == "not-applicable"

test_unrecorded if verdict({"closeout": {"package": {"deviations": true}}}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {["closeout", ["closeout", "deviations"]], ["closeout", ["closeout", "package", "deviations"]]}
}
