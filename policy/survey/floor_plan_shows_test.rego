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
