# METADATA
# title: Wood that holds the membrane does not rot
# description: Damp soil rots plain wood in a few years, and the edge comes loose with it.
# custom:
#   subject: membrane
#   grade: required
#   stage: running
#   remedy: Change the wood to pressure-treated or naturally decay-resistant wood.
#   caution: Dust of treated wood is harmful; cut it outdoors with a mask.
package policy.membrane.decay_resistant

import data.policy.membranes
import rego.v2

subjects contains gap if some gap in membranes.unlisted

subjects contains [s.id, ["systems", i, "membrane", "wood_treated"]] if some i, s in input.systems

exempt contains outcome if some outcome in membranes.none

exempt contains [s.id, "no wood holds it"] if {
	some s in input.systems
	s.membrane.held_by_wood == false
}

met contains s.id if {
	some s in input.systems
	s.id in membranes.laid
	s.membrane.held_by_wood == true
	s.membrane.wood_treated == true
}

deficient contains [s.id, ["systems", i, "membrane", "wood_treated"]] if {
	some i, s in input.systems
	s.id in membranes.laid
	s.membrane.wood_treated == false
}

missing contains gap if some gap in membranes.unsaid

missing contains [s.id, ["systems", i, "membrane", "held_by_wood"]] if {
	some i, s in input.systems
	not is_boolean(s.membrane.held_by_wood)
}

missing contains [s.id, ["systems", i, "membrane", "wood_treated"]] if {
	some i, s in input.systems
	not is_boolean(s.membrane.wood_treated)
}
