package policy.testing.closed_before_test

import data.policy.lib
import data.policy.testing.closed_before as rule
import rego.v2

# ANSI/AARST MAH 2019 7.3.2: closed 12 h before every short test after the work;
# a monitor may wait for hours in one piece instead.
consensus := {"testing": {"closed_before": {
	"lead": {"si": 43200}, "brief": {"si": 345600},
	"lengths": {"any_of": ["brief", "longer"]}, "by_hours": {"any_of": ["continuous-monitor"]},
}}}

# 25 Pa. Code 240.310(a)(4)(iv): the 12 h are for tests shorter than 96 h.
pennsylvania := {"testing": {"closed_before": {
	"lead": {"si": 43200}, "brief": {"si": 345600},
	"lengths": {"any_of": ["brief"]}, "by_hours": {"any_of": []},
}}}

profile := consensus

job(about, values) := {
	"job": {"contaminant": "radon"},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "charcoal", "blank": false, "kind": "short-term"}, about)]},
	"derived": {"tests": [object.union({"id": "t", "at": "/measurements/tests/0"}, values)]},
}

verdict(about, values) := v if v := lib.verdict(rule, "t") with input as job(about, values) with data.profile as profile

verdict_in(state, about, values) := v if v := lib.verdict(rule, "t") with input as job(about, values) with data.profile as state

two_days := {"duration": {"si": 172800}}

test_met_at_exactly_half_a_day if verdict({}, object.union(two_days, {"closed_lead": {"si": 43200}})) == "met"

test_deficient_a_minute_short if verdict({}, object.union(two_days, {"closed_lead": {"si": 43140}})) == "deficient"

# Worked case 19: 120 h, closed 10 h before.
case_19 := {"duration": {"si": 432000}, "closed_lead": {"si": 36000}}

test_five_days_need_no_lead_in_pennsylvania if verdict_in(pennsylvania, {}, case_19) == "not-applicable"

test_five_days_need_the_lead_in_the_consensus_standard if verdict_in(consensus, {}, case_19) == "deficient"

# 96 h is not shorter than 96 h.
test_exactly_four_days_need_no_lead_in_pennsylvania if {
	verdict_in(pennsylvania, {}, {"duration": {"si": 345600}, "closed_lead": {"si": 0}}) == "not-applicable"
}

test_a_monitor_is_judged_by_its_hours if {
	verdict({"device": "continuous-monitor"}, object.union(two_days, {"closed_lead": {"si": 0}})) == "not-applicable"
	verdict_in(pennsylvania, {"device": "continuous-monitor"}, object.union(two_days, {"closed_lead": {"si": 0}})) == "deficient"
}

test_unrecorded if verdict({}, two_days) == "unrecorded"

test_unrecorded_without_the_duration if verdict({}, {"closed_lead": {"si": 43200}}) == "unrecorded"

test_a_test_before_the_work_is_put_aside if verdict({"phase": "before"}, {}) == "not-applicable"

test_long_term_tests_are_put_aside if verdict({"kind": "long-term"}, {}) == "not-applicable"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "measurements") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"derived": {"tests": [{"id": "t", "at": ""}]}, "systems": [{"id": "s"}], "measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["t", ["measurements", "tests", 0, "phase"]],
		["t", ["measurements", "tests", 0, "blank"]],
		["t", ["job", "contaminant"]],
		["t", ["measurements", "tests", 0, "kind"]],
		["t", ["measurements", "tests", 0, "device"]],
		["t", ["derived", "tests", 0, "duration"]],
		["t", ["derived", "tests", 0, "closed_lead"]],
	}
}
