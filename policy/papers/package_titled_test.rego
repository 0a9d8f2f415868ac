package policy.papers.package_titled_test

import data.policy.lib
import data.policy.papers.package_titled as rule
import rego.v2

# RMS-MF 2018 (12/20) 10.2.1, family text: where the owner lives in the house, a
# packet titled as radon mitigation information.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(occupancy, said) := {"house": {"occupancy": occupancy}, "closeout": {"package": {"titled": said}}}

test_met if verdict(record("owner", true)) == "met"

test_deficient if verdict(record("owner", false)) == "deficient"

test_not_applicable_to_rented_houses if verdict(record("tenant", false)) == "not-applicable"

test_unrecorded if verdict({"closeout": {"package": {"titled": true}}}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {["closeout", ["house", "occupancy"]], ["closeout", ["closeout", "package", "titled"]]}
}
