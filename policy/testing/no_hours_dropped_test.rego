package policy.testing.no_hours_dropped_test

import data.policy.lib
import data.policy.testing.no_hours_dropped as rule
import rego.v2

# ANSI/AARST MAH 2019 8.5.3(c): only hours at the start may go (4 h, 12 h and more
# for the closed house, 24 h and more for the fan); other removal voids the test.
# That part of an hour at the end does not count as removed is common practice.
profile := {"testing": {"no_hours_dropped": {"between": {"si": 0}, "tail": {"si": 3600}}}}

job(about, values) := {
	"job": {"contaminant": "radon"},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "continuous-monitor", "kind": "short-term"}, about)]},
	"derived": {"tests": [object.union({"id": "t", "at": "/measurements/tests/0"}, values)]},
}

verdict(about, values) := v if v := lib.verdict(rule, "t") with input as job(about, values) with data.profile as profile

none := {"hours_left_out": {"si": 0}}

test_met if verdict(none, {"tail_left_out": {"si": 0}}) == "met"

test_met_with_part_of_an_hour_at_the_end if verdict(none, {"tail_left_out": {"si": 3540}}) == "met"

test_deficient_with_a_whole_hour_at_the_end if verdict(none, {"tail_left_out": {"si": 3600}}) == "deficient"

test_deficient_with_an_hour_in_between if {
	verdict({"hours_left_out": {"si": 3600}}, {"tail_left_out": {"si": 0}}) == "deficient"
}

test_unrecorded if verdict({}, {"tail_left_out": {"si": 0}}) == "unrecorded"

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
		["t", ["measurements", "tests", 0, "hours_left_out"]],
		["t", ["derived", "tests", 0, "tail_left_out"]],
	}
}
