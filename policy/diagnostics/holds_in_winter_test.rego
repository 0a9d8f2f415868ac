package policy.diagnostics.holds_in_winter_test

import data.policy.diagnostics.holds_in_winter as rule
import data.policy.lib
import rego.v2

# common practice: the suction measured on the day of the test, less what the house
# draws more in design weather, is still suction.
profile := {"diagnostics": {"holds_in_winter": {"holds": {"any_of": ["holds"]}, "marginal": {"any_of": ["marginal"]}}}}

job(values) := {
	"diagnostics": {"neutral_level": {"si": 3}, "communication_tests": [{"id": "t", "holes": []}]},
	"derived": {"communication": [object.union({"id": "t", "at": ""}, values)]},
}

verdict(job) := v if v := lib.verdict(rule, "t") with input as job with data.profile as profile

test_unrecorded if verdict(job({})) == "unrecorded"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "diagnostics") with input as {} with data.profile as profile
}

test_met if verdict(job({"seasonal_verdict": "holds"})) == "met"

test_a_neutral_level_that_was_assumed_counts_against_it_only if {
	verdict(json.remove(job({"seasonal_verdict": "holds"}), ["diagnostics/neutral_level"])) == "unrecorded"
	verdict(json.remove(job({"seasonal_verdict": "reverses"}), ["diagnostics/neutral_level"])) == "deficient"
}

test_deficient if verdict(job({"seasonal_verdict": "reverses"})) == "deficient"

test_undetermined if verdict(job({"seasonal_verdict": "marginal"})) == "undetermined"

test_says_that_weather_and_holes_are_missing if {
	got := rule.missing with data.profile as profile with input as {"diagnostics": {"communication_tests": [{"id": "t"}]}, "derived": {"communication": [{"id": "t", "at": ""}]}}
	got == {
		["t", ["diagnostics", "neutral_level"]],
		["t", ["derived", "communication", 0, "stack_correction"]],
		["t", ["diagnostics", "communication_tests", 0, "holes"]],
	}
}

test_says_that_a_pressure_is_missing if {
	got := rule.missing with data.profile as profile with input as {
		"diagnostics": {"neutral_level": {"si": 3}, "communication_tests": [{"id": "t", "holes": [{"id": "h"}]}]},
		"derived": {"communication": [{"id": "t", "at": "", "stack_correction": {"si": 3}}]},
	}
	got == {["t", ["diagnostics", "communication_tests", 0, "holes", 0, "pressure"]]}
}

test_says_that_no_hole_is_listed if {
	got := rule.missing with data.profile as profile with input as job({"stack_correction": {"si": 3}})
	got == {["t", ["diagnostics", "communication_tests", 0, "holes"]]}
}
