package policy.testing.hours_in_one_piece_test

import data.policy.lib
import data.policy.testing.hours_in_one_piece as rule
import rego.v2

# ANSI/AARST MAH 2019 7.3.2(b): 46 valid hours in one piece after both waiting
# times.
profile := {"testing": {"hours_in_one_piece": {"minimum": {"si": 165600}}}}

job(about, values) := {
	"job": {"contaminant": "radon"},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "continuous-monitor", "kind": "short-term"}, about)]},
	"derived": {"tests": [object.union({"id": "t", "at": "/measurements/tests/0"}, values)]},
}

verdict(about, values) := v if v := lib.verdict(rule, "t") with input as job(about, values) with data.profile as profile

# Worked case 17: started 2 h after the fan, ran to hour 74, reported from hour
# 24 on: 50 h in one piece.
test_met_with_fifty_hours if verdict({}, {"valid_hours": {"si": 180000}}) == "met"

test_met_at_exactly_forty_six if verdict({}, {"valid_hours": {"si": 165600}}) == "met"

test_deficient_at_forty_five if verdict({}, {"valid_hours": {"si": 162000}}) == "deficient"

test_undetermined_when_hours_were_left_out if {
	verdict({"hours_left_out": {"si": 7200}}, {"valid_hours": {"undetermined": ["/measurements/tests/0/hours_left_out"]}}) == "undetermined"
}

test_unrecorded if verdict({}, {"valid_hours": {"undetermined": ["/measurements/tests/0/closed_from"]}}) == "unrecorded"

test_a_test_before_the_work_is_put_aside if verdict({"phase": "before"}, {}) == "not-applicable"

test_other_devices_are_put_aside if verdict({"device": "charcoal"}, {}) == "not-applicable"

test_not_applicable_without_a_fan if {
	passive := object.union(job({}, {}), {"systems": [{"id": "s", "powered_by": "passive"}]})
	"not-applicable" == lib.verdict(rule, "t") with input as passive with data.profile as profile
}

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "measurements") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"derived": {"tests": [{"id": "t", "at": ""}]}, "systems": [{"id": "s"}], "measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["t", ["measurements", "tests", 0, "phase"]],
		["t", ["measurements", "tests", 0, "blank"]],
		["t", ["job", "contaminant"]],
		["t", ["systems", 0, "powered_by"]],
		["t", ["measurements", "tests", 0, "device"]],
		["t", ["derived", "tests", 0, "valid_hours"]],
	}
}
