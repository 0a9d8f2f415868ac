# METADATA
# title: A level outlet is high up and far from every opening
# description: A jet thrown level meets walls and people unless it starts well above them.
# custom:
#   subject: outlet
#   grade: recommended
#   stage: roughed-in
#   remedy: Turn the outlet up, or move it to the height and distance called for.
#   caution: Work from a ladder that is set and tied, away from power lines.
#   limits:
#     angle: {dimension: angle, sense: at-least}
#     height: {dimension: length, sense: at-least}
#     radius: {dimension: length, sense: at-least}
package policy.exhaust.level_outlet

import data.policy.openings
import data.policy.systems
import rego.v2

limits := data.profile.exhaust.level_outlet

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "angle_from_vertical"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "the outlet is not level"] if {
	some s in input.systems
	s.discharge.angle_from_vertical.si != limits.angle.si
}

level contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.discharge.angle_from_vertical.si == limits.angle.si
}

# Outlets with an opening that is too near or of unknown distance.
hemmed_in contains id if some [id, _] in openings.unlisted

hemmed_in contains c.system if {
	some c in input.derived.clearances
	not is_number(c.distance.si)
}

hemmed_in contains c.system if {
	some c in input.derived.clearances
	c.distance.si < limits.radius.si
}

met contains d.id if {
	some d in input.derived.discharges
	d.id in level
	d.height_above_grade.si >= limits.height.si
	not d.id in hemmed_in
}

deficient contains [d.id, ["derived", "discharges", i, "height_above_grade"], "height"] if {
	some i, d in input.derived.discharges
	d.id in level
	d.height_above_grade.si < limits.height.si
}

deficient contains [c.system, ["derived", "clearances", i, "distance"], "radius"] if {
	some i, c in input.derived.clearances
	c.system in level
	c.distance.si < limits.radius.si
}

missing contains gap if some gap in systems.unsaid

missing contains gap if some gap in openings.unlisted

missing contains [s.id, ["systems", i, "discharge", "angle_from_vertical"]] if {
	some i, s in input.systems
	not is_number(s.discharge.angle_from_vertical.si)
}

missing contains [d.id, ["derived", "discharges", i, "height_above_grade"]] if {
	some i, d in input.derived.discharges
	not is_number(d.height_above_grade.si)
}

missing contains [c.system, ["derived", "clearances", i, "distance"]] if {
	some i, c in input.derived.clearances
	not is_number(c.distance.si)
}
