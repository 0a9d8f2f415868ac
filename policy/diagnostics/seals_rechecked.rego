# METADATA
# title: Seals at the fan and joints indoors were checked again with the fan on
# description: A leak on the pressure side blows soil gas into the house at full strength.
# custom:
#   subject: system
#   grade: required
#   stage: closeout
#   remedy: Check the joints with smoke or soap while the fan runs, and mend what leaks.
package policy.diagnostics.seals_rechecked

import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "seals_rechecked"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.fan.seals_rechecked == true
}

deficient contains [s.id, ["systems", i, "fan", "seals_rechecked"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.fan.seals_rechecked == false
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "fan", "seals_rechecked"]] if {
	some i, s in input.systems
	not is_boolean(s.fan.seals_rechecked)
}
