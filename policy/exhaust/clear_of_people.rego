# METADATA
# title: The outlet does not blow at a place where people gather
# description: Whoever sits on the deck in line with the jet breathes undiluted soil gas.
# custom:
#   subject: gathering place
#   grade: hazard
#   stage: roughed-in
#   remedy: Turn the outlet away from the place, or move it until the jet has the distance called for.
#   limits:
#     minimum: {dimension: length, sense: at-least}
package policy.exhaust.clear_of_people

import data.policy.systems
import rego.v2

minimum := data.profile.exhaust.clear_of_people.minimum.si

subjects contains ["house", ["house", "gathering_places"]] if not is_array(input.house.gathering_places)

subjects contains [g.id, ["house", "gathering_places", i, "in_line_of_jet"]] if {
	some i, g in input.house.gathering_places
}

exempt contains [id, "no fan blows soil gas out of this house"] if {
	some [id, _] in subjects
	systems.none_with_fan
}

met contains g.id if {
	count(systems.with_fan) > 0
	some g in input.house.gathering_places
	g.in_line_of_jet == false
}

met contains g.id if {
	count(systems.with_fan) > 0
	some g in input.house.gathering_places
	g.in_line_of_jet == true
	g.distance_along_jet.si >= minimum
}

deficient contains [g.id, ["house", "gathering_places", i, "distance_along_jet"], "minimum"] if {
	count(systems.with_fan) > 0
	some i, g in input.house.gathering_places
	g.in_line_of_jet == true
	g.distance_along_jet.si < minimum
}

missing contains [id, ["systems"]] if {
	some [id, _] in subjects
	not is_array(input.systems)
}

missing contains [id, path] if {
	some [id, _] in subjects
	count(systems.with_fan) == 0
	some [_, path] in systems.unsaid
}

missing contains [g.id, ["house", "gathering_places", i, "in_line_of_jet"]] if {
	some i, g in input.house.gathering_places
	not is_boolean(g.in_line_of_jet)
}

missing contains [g.id, ["house", "gathering_places", i, "distance_along_jet"]] if {
	some i, g in input.house.gathering_places
	not is_number(g.distance_along_jet.si)
}
