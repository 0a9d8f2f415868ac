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

import rego.v2

limits := data.profile.survey.floor_plan_shows
subjects contains ["diagnostics", ["diagnostics", "floor_plan_shows"]] if not is_array(input.diagnostics.floor_plan_shows)

subjects contains [item, ["diagnostics", "floor_plan_shows"]] if {
	is_array(input.diagnostics.floor_plan_shows)
	some item in limits.items.any_of
}

met contains item if {
	some item in limits.items.any_of
	item in input.diagnostics.floor_plan_shows
}

deficient contains [item, path] if {
	is_array(input.diagnostics.floor_plan_shows)
	some [item, path] in subjects
	not item in input.diagnostics.floor_plan_shows
}
