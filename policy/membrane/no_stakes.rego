# METADATA
# title: No stakes pierce the membrane
# description: Each stake is a hole that grows with every step beside it.
# custom:
#   subject: membrane
#   grade: recommended
#   stage: running
#   remedy: Pull the stakes and patch the holes.
#   caution: Enter a crawlspace only with a second person outside, light, and air that was checked.
package policy.membrane.no_stakes

import data.policy.membranes
import rego.v2

subjects contains gap if some gap in membranes.unlisted

subjects contains [s.id, ["systems", i, "membrane", "stakes_through"]] if some i, s in input.systems

exempt contains outcome if some outcome in membranes.none

met contains s.id if {
	some s in input.systems
	s.id in membranes.laid
	s.membrane.stakes_through == false
}

deficient contains [s.id, ["systems", i, "membrane", "stakes_through"]] if {
	some i, s in input.systems
	s.id in membranes.laid
	s.membrane.stakes_through == true
}

missing contains gap if some gap in membranes.unsaid

missing contains [s.id, ["systems", i, "membrane", "stakes_through"]] if {
	some i, s in input.systems
	not is_boolean(s.membrane.stakes_through)
}
