# METADATA
# title: An inspection gap stays open below untreated wood
# description: Where insects build out of sight the sill is eaten before anybody notices.
# custom:
#   subject: membrane
#   grade: recommended
#   stage: running
#   remedy: Cut the turned-up edge back to the gap that the local code asks for, and seal it there.
#   caution: Enter a crawlspace only with a second person outside, light, and air that was checked.
#   limits:
#     minimum: {dimension: length, sense: at-least}
package policy.membrane.gap_to_wood

import data.policy.membranes
import rego.v2

minimum := data.profile.membrane.gap_to_wood.minimum.si

subjects contains gap if some gap in membranes.unlisted

subjects contains [s.id, ["systems", i, "membrane", "gap_to_wood"]] if some i, s in input.systems

exempt contains outcome if some outcome in membranes.none

exempt contains [s.id, "local code asks for no gap"] if {
	some s in input.systems
	s.membrane.gap_asked_for == false
}

met contains s.id if {
	some s in input.systems
	s.id in membranes.laid
	s.membrane.gap_asked_for == true
	s.membrane.gap_to_wood.si >= minimum
}

deficient contains [s.id, ["systems", i, "membrane", "gap_to_wood"], "minimum"] if {
	some i, s in input.systems
	s.id in membranes.laid
	s.membrane.gap_asked_for == true
	s.membrane.gap_to_wood.si < minimum
}

missing contains gap if some gap in membranes.unsaid

missing contains [s.id, ["systems", i, "membrane", "gap_asked_for"]] if {
	some i, s in input.systems
	not is_boolean(s.membrane.gap_asked_for)
}

missing contains [s.id, ["systems", i, "membrane", "gap_to_wood"]] if {
	some i, s in input.systems
	not is_number(s.membrane.gap_to_wood.si)
}
