# METADATA
# title: The seams of the membrane are sealed
# description: An overlap that only lies there opens as soon as somebody crawls over it.
# custom:
#   subject: membrane
#   grade: required
#   stage: running
#   remedy: Tape or caulk every seam along its whole length.
#   caution: Enter a crawlspace only with a second person outside, light, and air that was checked.
package policy.membrane.seams_sealed

import data.policy.membranes
import rego.v2

subjects contains gap if some gap in membranes.unlisted

subjects contains [s.id, ["systems", i, "membrane", "seams_sealed"]] if some i, s in input.systems

exempt contains outcome if some outcome in membranes.none

exempt contains [s.id, "it is one sheet without seams"] if {
	some s in input.systems
	s.membrane.has_seams == false
}

met contains s.id if {
	some s in input.systems
	s.id in membranes.laid
	s.membrane.has_seams == true
	s.membrane.seams_sealed == true
}

deficient contains [s.id, ["systems", i, "membrane", "seams_sealed"]] if {
	some i, s in input.systems
	s.id in membranes.laid
	s.membrane.seams_sealed == false
}

missing contains gap if some gap in membranes.unsaid

missing contains [s.id, ["systems", i, "membrane", "has_seams"]] if {
	some i, s in input.systems
	not is_boolean(s.membrane.has_seams)
}

missing contains [s.id, ["systems", i, "membrane", "seams_sealed"]] if {
	some i, s in input.systems
	not is_boolean(s.membrane.seams_sealed)
}
