# METADATA
# title: Patches on the membrane lap far enough or are taped all round
# description: A small patch slides off its hole the first time somebody drags a box across it.
# custom:
#   subject: membrane
#   grade: required
#   stage: running
#   remedy: Lay a larger patch, or tape it all round.
#   caution: Enter a crawlspace only with a second person outside, light, and air that was checked.
#   limits:
#     minimum: {dimension: length, sense: at-least}
package policy.membrane.patches

import data.policy.membranes
import rego.v2

minimum := data.profile.membrane.patches.minimum.si

subjects contains gap if some gap in membranes.unlisted

subjects contains [s.id, ["systems", i, "membrane", "patch_overlap"]] if some i, s in input.systems

exempt contains outcome if some outcome in membranes.none

exempt contains [s.id, "it was not patched"] if {
	some s in input.systems
	s.membrane.patched == false
}

patched contains s.id if {
	some s in input.systems
	s.id in membranes.laid
	s.membrane.patched == true
}

met contains s.id if {
	some s in input.systems
	s.id in patched
	s.membrane.patch_overlap.si >= minimum
}

met contains s.id if {
	some s in input.systems
	s.id in patched
	s.membrane.patches_taped == true
}

deficient contains [s.id, ["systems", i, "membrane", "patch_overlap"], "minimum"] if {
	some i, s in input.systems
	s.id in patched
	s.membrane.patch_overlap.si < minimum
	s.membrane.patches_taped == false
}

missing contains gap if some gap in membranes.unsaid

missing contains [s.id, ["systems", i, "membrane", "patched"]] if {
	some i, s in input.systems
	not is_boolean(s.membrane.patched)
}

missing contains [s.id, ["systems", i, "membrane", "patch_overlap"]] if {
	some i, s in input.systems
	not is_number(s.membrane.patch_overlap.si)
}

missing contains [s.id, ["systems", i, "membrane", "patches_taped"]] if {
	some i, s in input.systems
	not is_boolean(s.membrane.patches_taped)
}
