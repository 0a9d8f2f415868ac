package policy.testing.calm_weather_test

import data.policy.lib
import data.policy.testing.calm_weather as rule
import rego.v2

# ANSI/AARST MAH 2019 2.2.3, advice: no test shorter than 4 days in severe weather.
profile := {"testing": {"calm_weather": {"brief": {"si": 345600}}}}

job(about, values) := {
	"job": {"contaminant": "radon"},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "charcoal", "blank": false, "kind": "short-term"}, about)]},
	"derived": {"tests": [object.union({"id": "t", "at": "/measurements/tests/0"}, values)]},
}

verdict(about, values) := v if v := lib.verdict(rule, "t") with input as job(about, values) with data.profile as profile

test_met if verdict({"severe_weather": false}, {"duration": {"si": 172800}}) == "met"

test_deficient if verdict({"severe_weather": true}, {"duration": {"si": 172800}}) == "deficient"

test_four_days_even_it_out if verdict({"severe_weather": true}, {"duration": {"si": 345600}}) == "not-applicable"

test_unrecorded if verdict({}, {"duration": {"si": 172800}}) == "unrecorded"

test_unrecorded_without_the_duration if verdict({"severe_weather": false}, {}) == "unrecorded"

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
		["t", ["measurements", "tests", 0, "severe_weather"]],
		["t", ["derived", "tests", 0, "duration"]],
	}
}
