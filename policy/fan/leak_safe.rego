# METADATA
# title: A failed joint at the fan cannot let soil gas into the house
# description: Couplings age; where one lets go, the gas should end up outdoors.
# custom:
#   subject: fan
#   grade: hazard
#   stage: roughed-in
#   remedy: Move the fan, or wall off and vent the place where it sits, so that a leak ends outdoors.
#   caution: Wiring and work on a running fan are for licensed people; cut the power and prove it dead first.
package policy.fan.leak_safe

import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "leak_safe"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.fan.leak_safe == true
}

deficient contains [s.id, ["systems", i, "fan", "leak_safe"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.fan.leak_safe == false
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "fan", "leak_safe"]] if {
	some i, s in input.systems
	not is_boolean(s.fan.leak_safe)
}
