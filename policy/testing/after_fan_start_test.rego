package policy.testing.after_fan_start_test

import data.policy.lib
import data.policy.testing.after_fan_start as rule
import rego.v2

# ANSI/AARST MAH 2019 7.3.2, EPA consumer guide, EPA RMS 1994 17.4 (from memory):
# 24 h or more after the fan was switched on.
profile := {"testing": {"after_fan_start": {"lead": {"si": 86400}, "by_hours": {"any_of": ["continuous-monitor"]}}}}

job(about, values) := {
	"job": {"contaminant": "radon"},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "charcoal", "blank": false, "kind": "short-term"}, about)]},
	"derived": {"tests": [object.union({"id": "t", "at": "/measurements/tests/0"}, values)]},
}

verdict(about, values) := v if v := lib.verdict(rule, "t") with input as job(about, values) with data.profile as profile

test_met_at_exactly_a_day if verdict({}, {"after_fan_start": {"si": 86400}}) == "met"

test_deficient_a_minute_earlier if verdict({}, {"after_fan_start": {"si": 86340}}) == "deficient"

test_deficient_before_the_fan_ran if verdict({}, {"after_fan_start": {"si": -3600}}) == "deficient"

# Worked case 17: a monitor started 2 h after the fan; MAH 7.3.2(b) judges the
# hours in one piece instead.
test_a_monitor_is_judged_by_its_hours if {
	verdict({"device": "continuous-monitor"}, {"after_fan_start": {"si": 7200}}) == "not-applicable"
}

# The EPA texts know no such way out.
test_a_monitor_waits_where_the_source_knows_no_other_way if {
	strict := {"testing": {"after_fan_start": {"lead": {"si": 86400}, "by_hours": {"any_of": []}}}}
	early := job({"device": "continuous-monitor"}, {"after_fan_start": {"si": 7200}})
	"deficient" == lib.verdict(rule, "t") with input as early with data.profile as strict
}

test_unrecorded if verdict({}, {"after_fan_start": {"undetermined": ["/systems/0/fan/started"]}}) == "unrecorded"

test_a_test_before_the_work_is_put_aside if verdict({"phase": "before"}, {}) == "not-applicable"

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
		["t", ["derived", "tests", 0, "after_fan_start"]],
	}
}
