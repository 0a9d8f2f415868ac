# METADATA
# title: The outlet is above the highest eave, near the ridge where that can be
# description: The higher the outlet, the less gas finds its way back to windows on any side.
# custom:
#   subject: outlet
#   grade: recommended
#   stage: roughed-in
#   remedy: Where it can be done, carry the pipe above the highest eave and close to the ridge.
package policy.exhaust.above_highest_eave

import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "above_highest_eave"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.discharge.above_highest_eave == true
}

deficient contains [s.id, ["systems", i, "discharge", "above_highest_eave"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.discharge.above_highest_eave == false
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "discharge", "above_highest_eave"]] if {
	some i, s in input.systems
	not is_boolean(s.discharge.above_highest_eave)
}
