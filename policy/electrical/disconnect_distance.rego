# METADATA
# title: The disconnect is near enough to the fan
# description: Whoever works on the fan has to keep the switch within reach or at least in view.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Have a disconnect fitted nearer to the fan.
#   caution: Wiring is work for licensed people; cut the power and prove it dead first.
#   limits:
#     maximum: {dimension: length, sense: at-most}
#     places: {dimension: choice, sense: one-of}
package policy.electrical.disconnect_distance

import data.policy.wiring
import rego.v2

limits := data.profile.electrical.disconnect_distance

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "electrical", "disconnect_distance"]] if some i, s in input.systems

exempt contains outcome if some outcome in wiring.outside

exempt contains [s.id, "its plug cuts the fan off"] if {
	some s in input.systems
	s.id in wiring.plugged
}

exempt contains [s.id, "its source does not speak of a fan in this place"] if {
	some s in input.systems
	is_string(s.fan.place)
	not s.fan.place in limits.places.any_of
}

judged contains s.id if {
	some s in input.systems
	s.id in wiring.judged
	s.id in wiring.fixed
	s.fan.place in limits.places.any_of
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.electrical.disconnect_distance.si <= limits.maximum.si
}

deficient contains [s.id, ["systems", i, "electrical", "disconnect_distance"], "maximum"] if {
	some i, s in input.systems
	s.id in judged
	s.electrical.disconnect_distance.si > limits.maximum.si
}

missing contains gap if some gap in wiring.unsaid

missing contains gap if some gap in wiring.unplaced
missing contains gap if some gap in wiring.unwired

missing contains [s.id, ["systems", i, "electrical", "disconnect_distance"]] if {
	some i, s in input.systems
	not is_number(s.electrical.disconnect_distance.si)
}
