# METADATA
# title: The outlet is high enough above the ground nearest to it
# description: Soil gas let out low drifts back to windows and to people in the yard.
# custom:
#   subject: outlet
#   grade: hazard
#   stage: roughed-in
#   remedy: Extend the stack until its open end reaches the height, measured from the ground nearest to it.
#   limits:
#     minimum: {dimension: length, sense: at-least}
package policy.exhaust.height_above_grade

import rego.v2

minimum := data.profile.exhaust.height_above_grade.minimum.si

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [d.id, ["derived", "discharges", i, "height_above_grade"]] if some i, d in input.derived.discharges

exempt contains [s.id, "only roughed in, no outlet yet"] if {
	some s in input.systems
	s.powered_by == "rough-in"
}

met contains d.id if {
	some d in input.derived.discharges
	d.height_above_grade.si >= minimum
}

deficient contains [d.id, ["derived", "discharges", i, "height_above_grade"], "minimum"] if {
	some i, d in input.derived.discharges
	d.height_above_grade.si < minimum
}
