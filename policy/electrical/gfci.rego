# METADATA
# title: The feed of the fan has ground-fault protection where it is damp
# description: On damp ground a fault in the fan goes through whoever touches it.
# custom:
#   subject: system
#   grade: hazard
#   stage: running
#   remedy: Have ground-fault protection fitted ahead of the fan.
#   caution: Wiring is work for licensed people; cut the power and prove it dead first.
#   limits:
#     places: {dimension: choice, sense: one-of}
#     connections: {dimension: choice, sense: one-of}
package policy.electrical.gfci

import data.policy.wiring
import rego.v2

limits := data.profile.electrical.gfci

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "electrical", "gfci"]] if some i, s in input.systems

exempt contains outcome if some outcome in wiring.outside

exempt contains [s.id, "its source does not speak of fans connected this way"] if {
	some s in input.systems
	is_string(s.electrical.connection)
	not s.electrical.connection in limits.connections.any_of
}

exempt contains [s.id, "its source does not speak of a fan in this place"] if {
	some s in input.systems
	is_string(s.fan.place)
	not s.fan.place in limits.places.any_of
}

judged contains s.id if {
	some s in input.systems
	s.id in wiring.judged
	s.electrical.connection in limits.connections.any_of
	s.fan.place in limits.places.any_of
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.electrical.gfci == true
}

deficient contains [s.id, ["systems", i, "electrical", "gfci"]] if {
	some i, s in input.systems
	s.id in judged
	s.electrical.gfci == false
}

missing contains gap if some gap in wiring.unsaid

missing contains gap if some gap in wiring.unplaced
missing contains gap if some gap in wiring.unwired

missing contains [s.id, ["systems", i, "electrical", "gfci"]] if {
	some i, s in input.systems
	not is_boolean(s.electrical.gfci)
}
