# METADATA
# title: The floor plan shows what design and later work depend on
# description: A bearing wall or a drain that is not on the plan is found with the drill.
# custom:
#   subject: item of the list
#   grade: required
#   stage: planned
#   remedy: Complete the floor plan.
#   limits:
#     items: {dimension: choice, sense: one-of}
package policy.survey.floor_plan_shows

import data.policy.radon_tests
import rego.v2

limits := data.profile.survey.floor_plan_shows
subjects contains ["diagnostics", ["diagnostics", "floor_plan_shows"]] if not is_array(input.diagnostics.floor_plan_shows)

subjects contains [item, ["diagnostics", "floor_plan_shows"]] if {
	is_array(input.diagnostics.floor_plan_shows)
	some item in limits.items.any_of
}

left_out contains item if {
	is_array(input.diagnostics.floor_plan_shows)
	some item in limits.items.any_of
	not item in input.diagnostics.floor_plan_shows
}

exempt contains [item, "a house that is being built has no earlier results"] if {
	some item in left_out
	item == "test-results"
	radon_tests.new_and_untested
}

exempt contains [item, "no diagnostic test was made"] if {
	some item in left_out
	item == "diagnostics"
	count(input.diagnostics.communication_tests) == 0
	count(input.diagnostics.smoke_tests) == 0
	count(input.diagnostics.backdraft_tests) == 0
}

met contains item if {
	some item in limits.items.any_of
	item in input.diagnostics.floor_plan_shows
}

deficient contains [item, path] if {
	some [item, path] in subjects
	item in left_out
}
