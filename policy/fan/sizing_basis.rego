# METADATA
# title: The record says from which readings the fan was chosen
# description: A fan taken off the shelf by habit is too weak for tight soil, or wastes heat and draws flue gas in loose gravel.
# custom:
#   subject: fan
#   grade: required
#   stage: planned
#   remedy: Note the suction and flow that the slab asked for in the communication test and the fan that gives them.
#   limits:
#     no_basis: {dimension: choice, sense: none-of}
package policy.fan.sizing_basis

import data.policy.systems
import rego.v2

no_basis := data.profile.fan.sizing_basis.no_basis.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "sizing_basis"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	is_string(s.fan.sizing_basis)
	not lower(s.fan.sizing_basis) in no_basis
}

deficient contains [s.id, ["systems", i, "fan", "sizing_basis"], "no_basis"] if {
	some i, s in input.systems
	s.id in systems.with_fan
	lower(s.fan.sizing_basis) in no_basis
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "fan", "sizing_basis"]] if {
	some i, s in input.systems
	not is_string(s.fan.sizing_basis)
}
