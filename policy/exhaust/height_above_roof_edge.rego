# METADATA
# title: A pipe on an outside wall ends above the roof edge next to it
# description: Gas let out below the edge rolls under the roof, into soffit vents and upper windows.
# custom:
#   subject: outlet
#   grade: required
#   stage: roughed-in
#   remedy: Carry the pipe past the edge of the roof by the height called for.
#   caution: Work from a ladder that is set and tied, away from power lines.
#   limits:
#     above: {dimension: length, sense: more-than}
#     minimum: {dimension: length, sense: at-least}
#     not_for: {dimension: choice, sense: not-for}
package policy.exhaust.height_above_roof_edge

import data.policy.systems
import rego.v2

limits := data.profile.exhaust.height_above_roof_edge

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "height_above_roof_edge"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "its source does not speak of systems driven this way"] if {
	some s in input.systems
	s.powered_by in limits.not_for.any_of
}

exempt contains [s.id, "the pipe does not run up an outside wall"] if {
	some s in input.systems
	is_string(s.discharge.mounting)
	s.discharge.mounting != "exterior-wall"
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	is_string(s.powered_by)
	not s.powered_by in limits.not_for.any_of
	s.discharge.mounting == "exterior-wall"
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.discharge.height_above_roof_edge.si >= limits.minimum.si
	s.discharge.height_above_roof_edge.si > limits.above.si
}

deficient contains [s.id, ["systems", i, "discharge", "height_above_roof_edge"], "minimum"] if {
	some i, s in input.systems
	s.id in judged
	s.discharge.height_above_roof_edge.si < limits.minimum.si
}

deficient contains [s.id, ["systems", i, "discharge", "height_above_roof_edge"], "above"] if {
	some i, s in input.systems
	s.id in judged
	s.discharge.height_above_roof_edge.si >= limits.minimum.si
	s.discharge.height_above_roof_edge.si <= limits.above.si
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "discharge", "mounting"]] if {
	some i, s in input.systems
	not is_string(s.discharge.mounting)
}

missing contains [s.id, ["systems", i, "discharge", "height_above_roof_edge"]] if {
	some i, s in input.systems
	not is_number(s.discharge.height_above_roof_edge.si)
}
