# METADATA
# title: The membrane is sealed to walls and piers
# description: The edge is the longest leak of all; there the fan draws house air in place of soil gas.
# custom:
#   subject: membrane
#   grade: required
#   stage: running
#   remedy: Seal the edge all round the walls and every pier.
#   caution: Adhesives give off vapor that is dangerous in a crawlspace; air it and keep flames away.
package policy.membrane.sealed_at_edges

import data.policy.membranes
import rego.v2

subjects contains gap if some gap in membranes.unlisted

subjects contains [s.id, ["systems", i, "membrane", "sealed_to_walls"]] if some i, s in input.systems

exempt contains outcome if some outcome in membranes.none

pierless contains s.id if {
	some s in input.systems
	s.membrane.has_piers == false
}

piers_sealed contains s.id if {
	some s in input.systems
	s.membrane.has_piers == true
	s.membrane.sealed_to_piers == true
}

met contains s.id if {
	some s in input.systems
	s.id in membranes.laid
	s.membrane.sealed_to_walls == true
	s.id in (pierless | piers_sealed)
}

deficient contains [s.id, ["systems", i, "membrane", "sealed_to_walls"]] if {
	some i, s in input.systems
	s.id in membranes.laid
	s.membrane.sealed_to_walls == false
}

deficient contains [s.id, ["systems", i, "membrane", "sealed_to_piers"]] if {
	some i, s in input.systems
	s.id in membranes.laid
	s.membrane.sealed_to_piers == false
	not s.id in pierless
}

missing contains gap if some gap in membranes.unsaid

missing contains [s.id, ["systems", i, "membrane", "sealed_to_walls"]] if {
	some i, s in input.systems
	not is_boolean(s.membrane.sealed_to_walls)
}

missing contains [s.id, ["systems", i, "membrane", "has_piers"]] if {
	some i, s in input.systems
	not is_boolean(s.membrane.has_piers)
}

missing contains [s.id, ["systems", i, "membrane", "sealed_to_piers"]] if {
	some i, s in input.systems
	not s.id in pierless
	not is_boolean(s.membrane.sealed_to_piers)
}
