package policy.survey.floor_plan_shows_test

import data.policy.lib
import data.policy.survey.floor_plan_shows as rule
import rego.v2

# EPA RMS 1994 11.3 (from memory): foundation types, bearing walls, drains, HVAC,
# entry points, test and diagnostic results, planned piping.
profile := {"survey": {"floor_plan_shows": {"items": {"any_of": ["drains", "hvac"]}}}}

verdict(shown, item) := v if {
	v := lib.verdict(rule, item) with input as {"diagnostics": {"floor_plan_shows": shown}} with data.profile as profile
}

test_met if verdict(["drains", "hvac"], "hvac") == "met"

test_deficient if verdict(["drains"], "hvac") == "deficient"

test_deficient_with_an_empty_list if verdict([], "drains") == "deficient"

test_unrecorded if {
	"unrecorded" == lib.verdict(rule, "diagnostics") with input as {} with data.profile as profile
}

results := {"survey": {"floor_plan_shows": {"items": {"any_of": ["test-results", "diagnostics"]}}}}

drawn(fields, item) := v if v := lib.verdict(rule, item) with input as fields with data.profile as results

untested := {
	"house": {"new_construction": true},
	"measurements": {"tests": []},
	"diagnostics": {"floor_plan_shows": [], "communication_tests": [], "smoke_tests": [], "backdraft_tests": []},
}

test_not_applicable_without_results if drawn(untested, "test-results") == "not-applicable"

test_not_applicable_without_diagnostic_tests if drawn(untested, "diagnostics") == "not-applicable"

test_met_where_they_are_drawn_in_all_the_same if {
	shown := object.union(untested, {"diagnostics": {"floor_plan_shows": ["test-results", "diagnostics"]}})
	drawn(shown, "test-results") == "met"
	drawn(shown, "diagnostics") == "met"
}

test_lists_that_are_left_out_exempt_nothing if {
	drawn(object.remove(untested, ["measurements"]), "test-results") == "deficient"
	drawn({"diagnostics": object.remove(untested.diagnostics, ["floor_plan_shows"])}, "diagnostics") == "unrecorded"
	every list in ["communication_tests", "smoke_tests", "backdraft_tests"] {
		fewer := object.remove(untested.diagnostics, [list])
		drawn({"diagnostics": fewer}, "diagnostics") == "deficient"
	}
}
