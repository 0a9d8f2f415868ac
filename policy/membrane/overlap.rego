# METADATA
# title: The sheets of the membrane overlap far enough
# description: Sheets shrink and slide; too short a lap turns into a slit.
# custom:
#   subject: membrane
#   grade: required
#   stage: running
#   remedy: Lay another strip over the seam so that the overlap is reached, and seal it.
#   caution: Enter a crawlspace only with a second person outside, light, and air that was checked.
#   limits:
#     minimum: {dimension: length, sense: at-least}
package policy.membrane.overlap

import data.policy.membranes
import rego.v2

minimum := data.profile.membrane.overlap.minimum.si

subjects contains gap if some gap in membranes.unlisted

subjects contains [s.id, ["systems", i, "membrane", "seam_overlap"]] if some i, s in input.systems

exempt contains outcome if some outcome in membranes.none

exempt contains [s.id, "it is one sheet without seams"] if {
	some s in input.systems
	s.membrane.has_seams == false
}

met contains s.id if {
	some s in input.systems
	s.id in membranes.laid
	s.membrane.has_seams == true
	s.membrane.seam_overlap.si >= minimum
}

deficient contains [s.id, ["systems", i, "membrane", "seam_overlap"], "minimum"] if {
	some i, s in input.systems
	s.id in membranes.laid
	s.membrane.seam_overlap.si < minimum
}

missing contains gap if some gap in membranes.unsaid

missing contains [s.id, ["systems", i, "membrane", "has_seams"]] if {
	some i, s in input.systems
	not is_boolean(s.membrane.has_seams)
}

missing contains [s.id, ["systems", i, "membrane", "seam_overlap"]] if {
	some i, s in input.systems
	not is_number(s.membrane.seam_overlap.si)
}
