# METADATA
# title: No soffit or gable vent lies beside the outlet
# description: Attic vents breathe in; an outlet beside one feeds soil gas to the attic although every distance to a window is kept.
# custom:
#   subject: outlet
#   grade: recommended
#   stage: roughed-in
#   remedy: Move the outlet away from the vent, or close that part of the vent and give the attic air elsewhere.
package policy.exhaust.apart_from_soffit_vent

import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "under_soffit_vent"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.discharge.under_soffit_vent == false
}

deficient contains [s.id, ["systems", i, "discharge", "under_soffit_vent"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.discharge.under_soffit_vent == true
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "discharge", "under_soffit_vent"]] if {
	some i, s in input.systems
	not is_boolean(s.discharge.under_soffit_vent)
}
