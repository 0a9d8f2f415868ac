# METADATA
# title: No window that opens lies above the outlet
# description: The plume rises; a window above it takes it in on a still evening even where the measured distance passes.
# custom:
#   subject: outlet
#   grade: recommended
#   stage: roughed-in
#   remedy: Carry the pipe past the window or to another side of the house.
package policy.exhaust.apart_from_window_above

import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "below_operable_window"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.discharge.below_operable_window == false
}

deficient contains [s.id, ["systems", i, "discharge", "below_operable_window"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.discharge.below_operable_window == true
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "discharge", "below_operable_window"]] if {
	some i, s in input.systems
	not is_boolean(s.discharge.below_operable_window)
}
