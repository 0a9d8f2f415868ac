# METADATA
# title: The outlet ends in open air
# description: A pipe that ends in an attic, soffit or garage fills the house with the gas it was meant to take out.
# custom:
#   subject: outlet
#   grade: hazard
#   stage: roughed-in
#   remedy: Carry the pipe out into open air before the system runs again.
#   limits:
#     not_for: {dimension: choice, sense: not-for}
package policy.exhaust.outdoors

import data.policy.systems
import rego.v2

not_for := data.profile.exhaust.outdoors.not_for.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "outdoors"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "its source does not speak of systems driven this way"] if {
	some s in input.systems
	s.powered_by in not_for
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	is_string(s.powered_by)
	not s.powered_by in not_for
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.discharge.outdoors == true
}

deficient contains [s.id, ["systems", i, "discharge", "outdoors"]] if {
	some i, s in input.systems
	s.id in judged
	s.discharge.outdoors == false
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "discharge", "outdoors"]] if {
	some i, s in input.systems
	not is_boolean(s.discharge.outdoors)
}
