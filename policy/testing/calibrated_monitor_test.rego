package policy.testing.calibrated_monitor_test

import data.policy.lib
import data.policy.testing.calibrated_monitor as rule
import rego.v2

# ANSI/AARST MAH 2019 8.5.3(a): the date of calibration is on the report; that it
# must not have run out is common practice.
profile := {"testing": {"calibrated_monitor": {"left": {"si": 0}}}}

job(about, values) := {
	"job": {"contaminant": "radon"},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "continuous-monitor", "kind": "short-term"}, about)]},
	"derived": {"tests": [object.union({"id": "t", "at": "/measurements/tests/0"}, values)]},
}

verdict(about, values) := v if v := lib.verdict(rule, "t") with input as job(about, values) with data.profile as profile

test_met_on_the_last_day if verdict({}, {"calibration_left": {"si": 0}}) == "met"

test_deficient_a_day_later if verdict({}, {"calibration_left": {"si": -86400}}) == "deficient"

test_unrecorded if verdict({}, {"calibration_left": {"undetermined": ["/measurements/tests/0/calibration_expires"]}}) == "unrecorded"

test_a_test_before_the_work_is_put_aside if verdict({"phase": "before"}, {}) == "not-applicable"

test_other_devices_are_put_aside if verdict({"device": "charcoal"}, {}) == "not-applicable"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "measurements") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"derived": {"tests": [{"id": "t", "at": ""}]}, "systems": [{"id": "s"}], "measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["t", ["measurements", "tests", 0, "phase"]],
		["t", ["measurements", "tests", 0, "blank"]],
		["t", ["job", "contaminant"]],
		["t", ["measurements", "tests", 0, "device"]],
		["t", ["derived", "tests", 0, "calibration_left"]],
	}
}
