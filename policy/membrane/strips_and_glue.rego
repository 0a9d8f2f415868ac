# METADATA
# title: Strips and glue hold the edge of the membrane to the wall
# description: Tape alone lets go of damp masonry within a season.
# custom:
#   subject: membrane
#   grade: required
#   stage: running
#   remedy: Glue the edge to the wall and hold it with furring strips.
#   caution: Adhesives give off vapor that is dangerous in a crawlspace; air it and keep flames away.
package policy.membrane.strips_and_glue

import data.policy.membranes
import rego.v2

subjects contains gap if some gap in membranes.unlisted

subjects contains [s.id, ["systems", i, "membrane", "strips_and_glue"]] if some i, s in input.systems

exempt contains outcome if some outcome in membranes.none

met contains s.id if {
	some s in input.systems
	s.id in membranes.laid
	s.membrane.strips_and_glue == true
}

deficient contains [s.id, ["systems", i, "membrane", "strips_and_glue"]] if {
	some i, s in input.systems
	s.id in membranes.laid
	s.membrane.strips_and_glue == false
}

missing contains gap if some gap in membranes.unsaid

missing contains [s.id, ["systems", i, "membrane", "strips_and_glue"]] if {
	some i, s in input.systems
	not is_boolean(s.membrane.strips_and_glue)
}
