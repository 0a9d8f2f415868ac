# METADATA
# title: The jet strikes no wall, soffit or eave
# description: Damp soil air wets whatever it hits; wood rots, and in frost ice builds up and falls.
# custom:
#   subject: outlet
#   grade: required
#   stage: roughed-in
#   remedy: Turn or extend the outlet so that it blows into free air.
package policy.exhaust.clear_of_surfaces

import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "strikes_surface"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.discharge.strikes_surface == false
}

deficient contains [s.id, ["systems", i, "discharge", "strikes_surface"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.discharge.strikes_surface == true
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "discharge", "strikes_surface"]] if {
	some i, s in input.systems
	not is_boolean(s.discharge.strikes_surface)
}
