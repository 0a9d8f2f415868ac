# METADATA
# title: A single vent for joined foundations ends above the highest roof
# description: In a house with several roof levels the vent of the lower part blows at the windows of the higher one.
# custom:
#   subject: outlet
#   grade: required
#   stage: roughed-in
#   remedy: Carry the vent up through the highest roof.
#   caution: Roof work needs fall protection.
#   limits:
#     minimum: {dimension: length, sense: at-least}
#     not_for: {dimension: choice, sense: not-for}
package policy.exhaust.height_above_highest_roof

import data.policy.systems
import rego.v2

not_for := data.profile.exhaust.height_above_highest_roof.not_for.any_of

minimum := data.profile.exhaust.height_above_highest_roof.minimum.si

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "height_above_highest_roof"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "its source does not speak of systems driven this way"] if {
	some s in input.systems
	s.powered_by in not_for
}

exempt contains [s.id, "the house is not new"] if {
	some s in input.systems
	input.house.new_construction == false
}

exempt contains [s.id, "the house stands on one foundation"] if {
	some s in input.systems
	count(input.house.foundations) <= 1
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	is_string(s.powered_by)
	not s.powered_by in not_for
	input.house.new_construction == true
	count(input.house.foundations) > 1
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.discharge.height_above_highest_roof.si >= minimum
}

deficient contains [s.id, ["systems", i, "discharge", "height_above_highest_roof"], "minimum"] if {
	some i, s in input.systems
	s.id in judged
	s.discharge.height_above_highest_roof.si < minimum
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["house", "new_construction"]] if {
	some s in input.systems
	not is_boolean(input.house.new_construction)
}

missing contains [s.id, ["house", "foundations"]] if {
	some s in input.systems
	not is_array(input.house.foundations)
}

missing contains [s.id, ["systems", i, "discharge", "height_above_highest_roof"]] if {
	some i, s in input.systems
	not is_number(s.discharge.height_above_highest_roof.si)
}
