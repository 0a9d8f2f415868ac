# METADATA
# title: Nothing blocks the outlet
# description: A choked outlet takes suction away from the slab and throws the gas back at the house.
# custom:
#   subject: outlet
#   grade: required
#   stage: roughed-in
#   remedy: Clear or remove whatever stands in the way of the air, and read the gauge again.
package policy.exhaust.unobstructed

import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "obstructed"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.discharge.obstructed == false
}

deficient contains [s.id, ["systems", i, "discharge", "obstructed"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.discharge.obstructed == true
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "discharge", "obstructed"]] if {
	some i, s in input.systems
	not is_boolean(s.discharge.obstructed)
}
