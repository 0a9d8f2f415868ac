# METADATA
# title: Water cannot gather in the fan housing
# description: Damp soil air drips in the pipe all winter; water standing in the housing drowns the motor.
# custom:
#   subject: fan
#   grade: required
#   stage: roughed-in
#   remedy: Mount the fan upright in a vertical run, or lead the water round it with a bypass.
#   caution: Wiring and work on a running fan are for licensed people; cut the power and prove it dead first.
#   limits:
#     upright: {dimension: choice, sense: one-of}
package policy.fan.sheds_condensate

import data.policy.systems
import rego.v2

upright := data.profile.fan.sheds_condensate.upright.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "orientation"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.fan.orientation in upright
}

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.fan.condensate_bypass == true
}

deficient contains [s.id, ["systems", i, "fan", "orientation"], "upright"] if {
	some i, s in input.systems
	s.id in systems.with_fan
	is_string(s.fan.orientation)
	not s.fan.orientation in upright
	s.fan.condensate_bypass == false
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "fan", "orientation"]] if {
	some i, s in input.systems
	not is_string(s.fan.orientation)
}

missing contains [s.id, ["systems", i, "fan", "condensate_bypass"]] if {
	some i, s in input.systems
	not is_boolean(s.fan.condensate_bypass)
	is_string(s.fan.orientation)
}
