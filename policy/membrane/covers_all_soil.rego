# METADATA
# title: The membrane covers all bare soil
# description: Soil left bare in a corner feeds the fan with house air and the house with soil gas.
# custom:
#   subject: membrane
#   grade: recommended
#   stage: running
#   remedy: Lay sheet over the bare soil and seal it to the rest.
#   caution: Enter a crawlspace only with a second person outside, light, and air that was checked.
package policy.membrane.covers_all_soil

import data.policy.membranes
import rego.v2

subjects contains gap if some gap in membranes.unlisted

subjects contains [s.id, ["systems", i, "membrane", "covers_all_soil"]] if some i, s in input.systems

exempt contains outcome if some outcome in membranes.none

met contains s.id if {
	some s in input.systems
	s.id in membranes.laid
	s.membrane.covers_all_soil == true
}

deficient contains [s.id, ["systems", i, "membrane", "covers_all_soil"]] if {
	some i, s in input.systems
	s.id in membranes.laid
	s.membrane.covers_all_soil == false
}

missing contains gap if some gap in membranes.unsaid

missing contains [s.id, ["systems", i, "membrane", "covers_all_soil"]] if {
	some i, s in input.systems
	not is_boolean(s.membrane.covers_all_soil)
}
