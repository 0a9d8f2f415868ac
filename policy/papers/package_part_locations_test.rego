package policy.papers.package_part_locations_test

import data.policy.lib
import data.policy.papers.package_part_locations as rule
import rego.v2

# common practice; SGM-SF 2017 (12/20) Table 13.7 prints it for vapor intrusion
# and managed buildings only.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(drive, said) := {
	"systems": [{"id": "s", "powered_by": drive}],
	"closeout": {"package": {"part_locations": said}},
}

test_met if verdict(record("fan", true)) == "met"

test_deficient if verdict(record("fan", false)) == "deficient"

test_unrecorded if verdict({"systems": [{"id": "s", "powered_by": "fan"}]}) == "unrecorded"

test_not_applicable_without_a_fan if {
	verdict(record("passive", false)) == "not-applicable"
	verdict({"systems": [{"id": "s", "powered_by": "rough-in"}]}) == "not-applicable"
}

test_an_unknown_drive_exempts_nothing if {
	verdict({"systems": [{"id": "s"}], "closeout": {"package": {"part_locations": true}}}) == "unrecorded"
	verdict({"closeout": {"package": {"part_locations": true}}}) == "unrecorded"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {["closeout", ["systems", 0, "powered_by"]], ["closeout", ["closeout", "package", "part_locations"]]}
}
