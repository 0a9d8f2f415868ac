# METADATA
# title: A floor plan of the house was drawn and kept
# description: Whoever repairs the system in ten years needs to know what lies where.
# custom:
#   subject: diagnostics
#   grade: required
#   stage: planned
#   remedy: Draw the floor plan, keep it with the job, and back it up with photos.
package policy.survey.floor_plan

import rego.v2

subjects contains ["diagnostics", ["diagnostics", "floor_plan"]]

met contains id if {
	some [id, _] in subjects
	input.diagnostics.floor_plan == true
}

deficient contains [id, ["diagnostics", "floor_plan"]] if {
	some [id, _] in subjects
	input.diagnostics.floor_plan == false
}
