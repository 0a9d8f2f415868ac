# METADATA
# title: Snow, sliding ice and frost were kept in mind for the stack
# description: Ice sliding off a roof shears pipes, and drifted snow or frost shuts the outlet in the months when radon is highest.
# custom:
#   subject: outlet
#   grade: recommended
#   stage: roughed-in
#   remedy: Check where snow slides and drifts, move or brace the stack, and note that it was looked at.
package policy.exhaust.snow_and_ice

import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "ice_considered"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "pipes do not freeze here"] if {
	some s in input.systems
	input.house.freezing_climate == false
}

judged contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	input.house.freezing_climate == true
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.discharge.ice_considered == true
}

deficient contains [s.id, ["systems", i, "discharge", "ice_considered"]] if {
	some i, s in input.systems
	s.id in judged
	s.discharge.ice_considered == false
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["house", "freezing_climate"]] if {
	some s in input.systems
	not is_boolean(input.house.freezing_climate)
}

missing contains [s.id, ["systems", i, "discharge", "ice_considered"]] if {
	some i, s in input.systems
	not is_boolean(s.discharge.ice_considered)
}
