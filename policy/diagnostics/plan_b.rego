# METADATA
# title: Where suction does not reach across the slab, it is written down what will be done instead
# description: Without a second plan a tight slab ends in a fan that hums and a level that stays.
# custom:
#   subject: diagnostics
#   grade: recommended
#   stage: planned
#   remedy: Write down the next step, such as more suction points, wall suction or another method.
#   limits:
#     no_plan: {dimension: choice, sense: none-of}
package policy.diagnostics.plan_b

import rego.v2

limits := data.profile.diagnostics.plan_b
subjects contains ["diagnostics", ["diagnostics", "plan_b"]]

exempt contains [id, "suction reaches across the slab"] if {
	some [id, _] in subjects
	input.diagnostics.slab_communicates == true
}

met contains id if {
	some [id, _] in subjects
	input.diagnostics.slab_communicates == false
	is_string(input.diagnostics.plan_b)
	not lower(input.diagnostics.plan_b) in limits.no_plan.any_of
}

deficient contains [id, path, "no_plan"] if {
	some [id, path] in subjects
	input.diagnostics.slab_communicates == false
	lower(input.diagnostics.plan_b) in limits.no_plan.any_of
}

missing contains [id, ["diagnostics", "slab_communicates"]] if {
	some [id, _] in subjects
	not is_boolean(input.diagnostics.slab_communicates)
}

missing contains [id, path] if {
	some [id, path] in subjects
	not is_string(input.diagnostics.plan_b)
}
