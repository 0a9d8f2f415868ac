package policy.physics.fan_off_reading_test

import data.policy.lib
import data.policy.physics.fan_off_reading as rule
import rego.v2

# common practice: without the fan a stack draws up to about 0.03 inH2O, rarely
# 0.05 inH2O (12.45 Pa).
profile := {"physics": {"fan_off_reading": {"most": {"si": 12.4544545}}}}

verdict(job) := v if v := lib.verdict(rule, "r") with input as job with data.profile as profile

record(reading) := {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": {
	"kind": "u-tube",
	"readings": [object.union({"id": "r"}, reading)],
}}]}

test_met_at_the_limit if verdict(record({"fan_on": false, "value": {"si": 12.4544545}})) == "met"

test_deficient if verdict(record({"fan_on": false, "value": {"si": 200}})) == "deficient"

test_not_applicable_with_the_fan_on if verdict(record({"fan_on": true, "value": {"si": 200}})) == "not-applicable"

test_unrecorded_when_the_fan_may_have_run if verdict(record({"value": {"si": 0}})) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "gauge": {"readings": [{"id": "r"}]}}]} with data.profile as profile
	got == {
		["r", ["systems", 0, "gauge", "kind"]],
		["r", ["systems", 0, "gauge", "readings", 0, "fan_on"]],
		["r", ["systems", 0, "gauge", "readings", 0, "value"]],
	}
}

test_not_applicable_without_a_gauge if {
	job := {"systems": [
		{"id": "s", "gauge": {"kind": "none", "readings": [{"id": "r"}]}},
		{"id": "t", "gauge": {"kind": "none"}},
	]}
	verdict(job) == "not-applicable"
	"not-applicable" == lib.verdict(rule, "t") with input as job with data.profile as profile
}

test_unrecorded_without_readings if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s"}]} with data.profile as profile
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}
