# METADATA
# title: The outlet is high enough above the ground nearest to it
# description: Soil gas let out low drifts back to windows and to people in the yard.
# custom:
#   subject: outlet
#   grade: hazard
#   stage: roughed-in
#   remedy: Extend the stack until its open end reaches the height, measured from the ground nearest to it.
#   caution: Work from a ladder that is set and tied, away from power lines.
#   limits:
#     minimum: {dimension: length, sense: at-least}
#     not_for: {dimension: choice, sense: not-for}
package policy.exhaust.height_above_grade

import data.policy.systems
import rego.v2

not_for := data.profile.exhaust.height_above_grade.not_for.any_of

minimum := data.profile.exhaust.height_above_grade.minimum.si

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "height_above_grade"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "its source does not speak of systems driven this way"] if {
	some s in input.systems
	s.powered_by in not_for
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	is_string(s.powered_by)
	not s.powered_by in not_for
}

met contains d.id if {
	some d in input.derived.discharges
	d.id in judged
	d.height_above_grade.si >= minimum
}

deficient contains [d.id, ["derived", "discharges", i, "height_above_grade"], "minimum"] if {
	some i, d in input.derived.discharges
	d.id in judged
	d.height_above_grade.si < minimum
}

missing contains gap if some gap in systems.unsaid

missing contains [d.id, ["derived", "discharges", i, "height_above_grade"]] if {
	some i, d in input.derived.discharges
	not is_number(d.height_above_grade.si)
}
