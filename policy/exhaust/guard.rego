# METADATA
# title: A guard at the outlet keeps animals out and lets the air through
# description: A nest in the pipe stops the system unseen; mesh that is too fine does the same.
# custom:
#   subject: outlet
#   grade: recommended
#   stage: running
#   remedy: Fit a guard whose clear opening is large enough, and read the gauge again.
#   limits:
#     kinds: {dimension: choice, sense: applies-to}
#     opening: {dimension: length, sense: at-least}
package policy.exhaust.guard

import data.policy.systems
import rego.v2

limits := data.profile.exhaust.guard

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "guard"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.discharge.guard in limits.kinds.any_of
	s.discharge.guard != "mesh"
}

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.discharge.guard == "mesh"
	s.discharge.guard in limits.kinds.any_of
	s.discharge.guard_opening.si >= limits.opening.si
}

deficient contains [s.id, ["systems", i, "discharge", "guard"], "kinds"] if {
	some i, s in input.systems
	s.id in systems.with_fan
	is_string(s.discharge.guard)
	not s.discharge.guard in limits.kinds.any_of
}

deficient contains [s.id, ["systems", i, "discharge", "guard_opening"], "opening"] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.discharge.guard == "mesh"
	s.discharge.guard_opening.si < limits.opening.si
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "discharge", "guard"]] if {
	some i, s in input.systems
	not is_string(s.discharge.guard)
}

missing contains [s.id, ["systems", i, "discharge", "guard_opening"]] if {
	some i, s in input.systems
	s.discharge.guard == "mesh"
	not is_number(s.discharge.guard_opening.si)
}
