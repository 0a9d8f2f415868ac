# METADATA
# title: The mounting keeps vibration off the framing
# description: A fan that hums through the studs is switched off by the people who sleep there.
# custom:
#   subject: fan
#   grade: required
#   stage: running
#   remedy: Hang the fan in flexible couplings or on pads, and hold the pipe instead of the fan.
package policy.fan.vibration_isolated

import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "vibration_isolated"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.fan.vibration_isolated == true
}

deficient contains [s.id, ["systems", i, "fan", "vibration_isolated"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.fan.vibration_isolated == false
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "fan", "vibration_isolated"]] if {
	some i, s in input.systems
	not is_boolean(s.fan.vibration_isolated)
}
