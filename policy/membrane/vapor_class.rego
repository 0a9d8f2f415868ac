# METADATA
# title: The membrane is of a tested class of vapor retarder
# description: Thickness says little of strength; recycled sheet of the same thickness tears and crumbles far sooner.
# custom:
#   subject: membrane
#   grade: required
#   stage: running
#   remedy: Lay a sheet whose data sheet states the class.
#   caution: Enter a crawlspace only with a second person outside, light, and air that was checked.
#   limits:
#     classes: {dimension: choice, sense: one-of}
package policy.membrane.vapor_class

import data.policy.membranes
import rego.v2

classes := data.profile.membrane.vapor_class.classes.any_of

subjects contains gap if some gap in membranes.unlisted

subjects contains [s.id, ["systems", i, "membrane", "e1745_class"]] if some i, s in input.systems

exempt contains outcome if some outcome in membranes.none

met contains s.id if {
	some s in input.systems
	s.id in membranes.laid
	s.membrane.e1745_class in classes
}

deficient contains [s.id, ["systems", i, "membrane", "e1745_class"], "classes"] if {
	some i, s in input.systems
	s.id in membranes.laid
	is_string(s.membrane.e1745_class)
	s.membrane.e1745_class != "none"
	not s.membrane.e1745_class in classes
}

undetermined contains [s.id, ["systems", i, "membrane", "e1745_class"], "its data sheet shows no class"] if {
	some i, s in input.systems
	s.id in membranes.laid
	s.membrane.e1745_class == "none"
}

missing contains gap if some gap in membranes.unsaid

missing contains [s.id, ["systems", i, "membrane", "e1745_class"]] if {
	some i, s in input.systems
	not is_string(s.membrane.e1745_class)
}
