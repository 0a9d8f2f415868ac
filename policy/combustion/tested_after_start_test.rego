package policy.combustion.tested_after_start_test

import data.policy.combustion.tested_after_start as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 17.3 (from memory): right after activation.
job(about) := {
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "fan": {"started": {"si": 1000}}}],
	"diagnostics": {"backdraft_tests": [object.union({"id": "t", "system_on": true}, about)]},
}

verdict(job) := v if v := lib.verdict(rule, "t") with input as job

test_met if verdict(job({"at": {"si": 2800}})) == "met"

test_met_at_the_start if verdict(job({"at": {"si": 1000}})) == "met"

test_deficient_before if verdict(job({"at": {"si": 999}})) == "deficient"

test_deficient_before_the_second_fan if {
	two := object.union(job({"at": {"si": 2800}}), {"systems": [
		{"id": "s", "kind": "sub-slab", "powered_by": "fan", "fan": {"started": {"si": 1000}}},
		{"id": "r", "kind": "sub-membrane", "powered_by": "fan", "fan": {"started": {"si": 9000}}},
	]})
	verdict(two) == "deficient"
}

test_a_reading_with_the_system_off_is_for_comparison if {
	verdict(job({"system_on": false, "at": {"si": 1}})) == "not-applicable"
}

test_not_applicable_without_a_fan if {
	verdict(object.union(job({}), {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]})) == "not-applicable"
}

test_unrecorded if verdict(job({})) == "unrecorded"

test_unrecorded_without_a_list if "unrecorded" == lib.verdict(rule, "diagnostics") with input as {}

test_no_list_needed_where_nothing_burns if {
	got := rule.subjects with input as {"house": {"combustion": []}}
	count(got) == 0
}

test_says_what_is_missing if {
	vague := rule.missing with input as {"systems": [{"id": "s"}], "diagnostics": {"backdraft_tests": [{"id": "t"}]}}
	vague == {
		["t", ["systems", 0, "kind"]],
		["t", ["systems", 0, "powered_by"]],
		["t", ["diagnostics", "backdraft_tests", 0, "system_on"]],
		["t", ["diagnostics", "backdraft_tests", 0, "at"]],
	}
	unstarted := rule.missing with input as object.union(job({"at": {"si": 1}}), {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}]})
	unstarted == {["t", ["systems", 0, "fan", "started"]]}
	none := rule.missing with input as {"diagnostics": {"backdraft_tests": [{"id": "t", "system_on": true, "at": {"si": 1}}]}}
	none == {["t", ["systems"]]}
}
