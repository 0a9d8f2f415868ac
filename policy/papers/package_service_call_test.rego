package policy.papers.package_service_call_test

import data.policy.lib
import data.policy.papers.package_service_call as rule
import rego.v2

# CCAH 2020 exhibit 2, a form for occupants: call for service when the gauge
# differs much from its mark or reads zero.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(drive, said) := {
	"systems": [{"id": "s", "powered_by": drive}],
	"closeout": {"package": {"service_change": said}},
}

test_met if verdict(record("fan", true)) == "met"

test_deficient if verdict(record("fan", false)) == "deficient"

test_unrecorded if verdict({"systems": [{"id": "s", "powered_by": "fan"}]}) == "unrecorded"

test_not_applicable_without_a_fan if {
	verdict(record("passive", false)) == "not-applicable"
	verdict({"systems": [{"id": "s", "powered_by": "rough-in"}]}) == "not-applicable"
}

test_an_unknown_drive_exempts_nothing if {
	verdict({"systems": [{"id": "s"}], "closeout": {"package": {"service_change": true}}}) == "unrecorded"
	verdict({"closeout": {"package": {"service_change": true}}}) == "unrecorded"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {["closeout", ["systems", 0, "powered_by"]], ["closeout", ["closeout", "package", "service_change"]]}
}
