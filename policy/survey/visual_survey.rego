# METADATA
# title: The whole house was looked over before any work
# description: An opening nobody saw stays open, and a flue nobody saw can fill the house with flue gas.
# custom:
#   subject: diagnostics
#   grade: required
#   stage: planned
#   remedy: Go through the whole house, every level and every wall that touches soil, before anything is drilled.
package policy.survey.visual_survey

import rego.v2

subjects contains ["diagnostics", ["diagnostics", "visual_survey"]]

met contains id if {
	some [id, _] in subjects
	input.diagnostics.visual_survey == true
}

deficient contains [id, ["diagnostics", "visual_survey"]] if {
	some [id, _] in subjects
	input.diagnostics.visual_survey == false
}
