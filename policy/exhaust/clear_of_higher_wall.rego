# METADATA
# title: A roof outlet stands clear of a wall that rises above it
# description: Wind presses the plume against a higher wall and into whatever opens there.
# custom:
#   subject: outlet
#   grade: required
#   stage: roughed-in
#   remedy: Move the pipe away from the wall, or raise it above the top of the wall.
#   caution: Roof work needs fall protection.
#   limits:
#     minimum: {dimension: length, sense: at-least}
#     not_for: {dimension: choice, sense: not-for}
package policy.exhaust.clear_of_higher_wall

import data.policy.systems
import rego.v2

limits := data.profile.exhaust.clear_of_higher_wall

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "wall_rises_above"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "its source does not speak of systems driven this way"] if {
	some s in input.systems
	s.powered_by in limits.not_for.any_of
}

exempt contains [s.id, "the pipe does not come through the roof"] if {
	some s in input.systems
	is_string(s.discharge.mounting)
	s.discharge.mounting != "through-roof"
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	is_string(s.powered_by)
	not s.powered_by in limits.not_for.any_of
	s.discharge.mounting == "through-roof"
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.discharge.wall_rises_above == false
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.discharge.wall_rises_above == true
	s.discharge.distance_to_higher_wall.si >= limits.minimum.si
}

deficient contains [s.id, ["systems", i, "discharge", "distance_to_higher_wall"], "minimum"] if {
	some i, s in input.systems
	s.id in judged
	s.discharge.wall_rises_above == true
	s.discharge.distance_to_higher_wall.si < limits.minimum.si
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "discharge", "mounting"]] if {
	some i, s in input.systems
	not is_string(s.discharge.mounting)
}

missing contains [s.id, ["systems", i, "discharge", "wall_rises_above"]] if {
	some i, s in input.systems
	not is_boolean(s.discharge.wall_rises_above)
}

missing contains [s.id, ["systems", i, "discharge", "distance_to_higher_wall"]] if {
	some i, s in input.systems
	not is_number(s.discharge.distance_to_higher_wall.si)
}
