package policy.testing.started_in_time_test

import data.policy.lib
import data.policy.testing.started_in_time as rule
import rego.v2

# EPA consumer guide; EPA RMS 1994 17.4 and an Illinois training text (from
# memory): 30 days after completion at most.
profile := {"testing": {"started_in_time": {"within": {"si": 2592000}}}}

job(about, values) := {
	"job": {"contaminant": "radon"},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "charcoal", "blank": false, "kind": "short-term"}, about)]},
	"derived": {"tests": [object.union({"id": "t", "at": "/measurements/tests/0"}, values)]},
}

verdict(about, values) := v if v := lib.verdict(rule, "measurements") with input as job(about, values) with data.profile as profile

test_met_on_the_thirtieth_day if verdict({}, {"days_after_completion": {"si": 2592000}}) == "met"

test_deficient_on_the_day_after if verdict({}, {"days_after_completion": {"si": 2678400}}) == "deficient"

test_one_early_test_is_enough if {
	two := {
		"job": {"contaminant": "radon"},
		"systems": [{"id": "s", "powered_by": "fan"}],
		"measurements": {"tests": [
			{"id": "a", "phase": "after", "device": "continuous-monitor"},
			{"id": "b", "phase": "after", "device": "continuous-monitor"},
		]},
		"derived": {"tests": [
			{"id": "a", "at": "", "days_after_completion": {"si": 172800}},
			{"id": "b", "at": "", "days_after_completion": {"si": 8640000}},
		]},
	}
	"met" == lib.verdict(rule, "measurements") with input as two with data.profile as profile
}

test_a_test_without_a_start_may_be_the_early_one if {
	two := {
		"job": {"contaminant": "radon"},
		"systems": [{"id": "s", "powered_by": "fan"}],
		"measurements": {"tests": [
			{"id": "a", "phase": "after", "device": "continuous-monitor"},
			{"id": "b", "phase": "after", "device": "continuous-monitor"},
		]},
		"derived": {"tests": [
			{"id": "a", "at": ""},
			{"id": "b", "at": "", "days_after_completion": {"si": 8640000}},
		]},
	}
	"unrecorded" == lib.verdict(rule, "measurements") with input as two with data.profile as profile
}

test_unrecorded if verdict({}, {}) == "unrecorded"

test_nothing_to_judge_without_a_test_after if verdict({"phase": "before"}, {}) == "not-applicable"

test_not_applicable_without_a_fan if {
	passive := object.union(job({}, {}), {"systems": [{"id": "s", "powered_by": "passive"}]})
	"not-applicable" == lib.verdict(rule, "measurements") with input as passive with data.profile as profile
}

test_not_applicable_to_chemical_vapor if {
	other := object.union(job({}, {}), {"job": {"contaminant": "chemical-vapor"}})
	"not-applicable" == lib.verdict(rule, "measurements") with input as other with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"derived": {"tests": [{"id": "t", "at": ""}]}, "systems": [{"id": "s"}], "measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["measurements", ["measurements", "tests", 0, "phase"]],
		["measurements", ["measurements", "tests", 0, "blank"]],
		["measurements", ["job", "contaminant"]],
		["measurements", ["systems", 0, "powered_by"]],
		["measurements", ["derived", "tests", 0, "days_after_completion"]],
	}
}
