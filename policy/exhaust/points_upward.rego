# METADATA
# title: The outlet points up
# description: A jet thrown up mixes and goes; thrown sideways or down it stays by walls, windows and people.
# custom:
#   subject: outlet
#   grade: required
#   stage: roughed-in
#   remedy: Turn the end of the pipe up to within the angle allowed.
#   limits:
#     maximum: {dimension: angle, sense: at-most}
#     exceptions: {dimension: choice, sense: one-of}
#     not_for: {dimension: choice, sense: not-for}
package policy.exhaust.points_upward

import data.policy.systems
import rego.v2

limits := data.profile.exhaust.points_upward

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "angle_from_vertical"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "its source does not speak of systems driven this way"] if {
	some s in input.systems
	s.powered_by in limits.not_for.any_of
}

# The angle of a level outlet is a limit of the requirement that judges it.
exempt contains [s.id, "a level outlet has its own requirement"] if {
	some s in input.systems
	"level" in limits.exceptions.any_of
	s.discharge.angle_from_vertical.si == data.profile.exhaust.level_outlet.angle.si
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	is_string(s.powered_by)
	not s.powered_by in limits.not_for.any_of
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.discharge.angle_from_vertical.si <= limits.maximum.si
}

deficient contains [s.id, ["systems", i, "discharge", "angle_from_vertical"], "maximum"] if {
	some i, s in input.systems
	s.id in judged
	s.discharge.angle_from_vertical.si > limits.maximum.si
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "discharge", "angle_from_vertical"]] if {
	some i, s in input.systems
	not is_number(s.discharge.angle_from_vertical.si)
}
