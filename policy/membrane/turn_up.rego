# METADATA
# title: The membrane is turned up at walls and piers
# description: A sheet cut off at the foot of the wall leaves no edge to seal.
# custom:
#   subject: membrane
#   grade: recommended
#   stage: running
#   remedy: Add a strip that reaches up the wall, and seal both its edges.
#   caution: Enter a crawlspace only with a second person outside, light, and air that was checked.
#   limits:
#     minimum: {dimension: length, sense: at-least}
package policy.membrane.turn_up

import data.policy.membranes
import rego.v2

minimum := data.profile.membrane.turn_up.minimum.si

subjects contains gap if some gap in membranes.unlisted

subjects contains [s.id, ["systems", i, "membrane", "wall_turn_up"]] if some i, s in input.systems

exempt contains outcome if some outcome in membranes.none

met contains s.id if {
	some s in input.systems
	s.id in membranes.laid
	s.membrane.wall_turn_up.si >= minimum
}

deficient contains [s.id, ["systems", i, "membrane", "wall_turn_up"], "minimum"] if {
	some i, s in input.systems
	s.id in membranes.laid
	s.membrane.wall_turn_up.si < minimum
}

missing contains gap if some gap in membranes.unsaid

missing contains [s.id, ["systems", i, "membrane", "wall_turn_up"]] if {
	some i, s in input.systems
	not is_number(s.membrane.wall_turn_up.si)
}
