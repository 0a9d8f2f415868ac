package policy.papers.package_results_test

import data.policy.lib
import data.policy.papers.package_results as rule
import rego.v2

# EPA RMS 1994 18.3, from memory: the package for the client holds the radon
# tests before and after.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(drive, said) := {
	"systems": [{"id": "s", "powered_by": drive}],
	"closeout": {"package": {"results_before_after": said}},
}

test_met if {
	verdict(record("fan", true)) == "met"
	verdict(record("passive", true)) == "met"
}

test_deficient if verdict(record("fan", false)) == "deficient"

test_unrecorded if verdict({"systems": [{"id": "s", "powered_by": "fan"}]}) == "unrecorded"

test_not_applicable_where_nothing_runs_yet if verdict(record("rough-in", false)) == "not-applicable"

test_an_unknown_drive_exempts_nothing if {
	verdict({"systems": [{"id": "s"}], "closeout": {"package": {"results_before_after": true}}}) == "unrecorded"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {["closeout", ["systems", 0, "powered_by"]], ["closeout", ["closeout", "package", "results_before_after"]]}
}
