# METADATA
# title: The pipe stands high enough above a flat roof
# description: A flat roof holds water, snow and people; a low outlet is blocked or breathed from.
# custom:
#   subject: outlet
#   grade: required
#   stage: roughed-in
#   remedy: Lengthen the pipe above the roof, measured where it comes through, and keep the flashing tight.
#   caution: Roof work needs fall protection.
#   limits:
#     minimum: {dimension: length, sense: at-least}
#     not_for: {dimension: choice, sense: not-for}
package policy.exhaust.height_above_flat_roof

import data.policy.systems
import rego.v2

not_for := data.profile.exhaust.height_above_flat_roof.not_for.any_of

minimum := data.profile.exhaust.height_above_flat_roof.minimum.si

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "height_above_roof"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "its source does not speak of systems driven this way"] if {
	some s in input.systems
	s.powered_by in not_for
}

exempt contains [s.id, "the pipe does not come through the roof"] if {
	some s in input.systems
	is_string(s.discharge.mounting)
	s.discharge.mounting != "through-roof"
}

exempt contains [s.id, "the roof is pitched"] if {
	some s in input.systems
	input.house.roof_kind == "pitched"
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	is_string(s.powered_by)
	not s.powered_by in not_for
	s.discharge.mounting == "through-roof"
	input.house.roof_kind == "flat"
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.discharge.height_above_roof.si >= minimum
}

deficient contains [s.id, ["systems", i, "discharge", "height_above_roof"], "minimum"] if {
	some i, s in input.systems
	s.id in judged
	s.discharge.height_above_roof.si < minimum
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "discharge", "mounting"]] if {
	some i, s in input.systems
	not is_string(s.discharge.mounting)
}

missing contains [s.id, ["house", "roof_kind"]] if {
	some s in input.systems
	not is_string(input.house.roof_kind)
}

missing contains [s.id, ["systems", i, "discharge", "height_above_roof"]] if {
	some i, s in input.systems
	not is_number(s.discharge.height_above_roof.si)
}
