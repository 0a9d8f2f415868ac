package policy.testing.hourly_data_test

import data.policy.lib
import data.policy.testing.hourly_data as rule
import rego.v2

# ANSI/AARST MAH 2019 8.5.3(b): hourly data can be had.
profile := {}

job(about, values) := {
	"job": {"contaminant": "radon"},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "charcoal", "blank": false, "kind": "short-term"}, about)]},
	"derived": {"tests": [object.union({"id": "t", "at": "/measurements/tests/0"}, values)]},
}

verdict(about, values) := v if v := lib.verdict(rule, "t") with input as job(about, values) with data.profile as profile

test_met if verdict({"device": "continuous-monitor", "hourly_data_kept": true}, {}) == "met"

test_deficient if verdict({"device": "continuous-monitor", "hourly_data_kept": false}, {}) == "deficient"

test_unrecorded if verdict({"device": "continuous-monitor"}, {}) == "unrecorded"

test_a_test_before_the_work_is_put_aside if verdict({"phase": "before"}, {}) == "not-applicable"

test_other_devices_are_put_aside if verdict({"device": "charcoal"}, {}) == "not-applicable"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "measurements") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["t", ["measurements", "tests", 0, "phase"]],
		["t", ["measurements", "tests", 0, "blank"]],
		["t", ["job", "contaminant"]],
		["t", ["measurements", "tests", 0, "device"]],
		["t", ["measurements", "tests", 0, "hourly_data_kept"]],
	}
}
