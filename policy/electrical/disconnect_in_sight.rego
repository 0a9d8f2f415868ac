# METADATA
# title: The disconnect can be seen from the fan
# description: A switch out of sight gets turned on by somebody while hands are in the fan.
# custom:
#   subject: system
#   grade: hazard
#   stage: running
#   remedy: Have a disconnect fitted where one sees it from the fan.
#   caution: Wiring is work for licensed people; cut the power and prove it dead first.
#   limits:
#     places: {dimension: choice, sense: one-of}
package policy.electrical.disconnect_in_sight

import data.policy.wiring
import rego.v2

limits := data.profile.electrical.disconnect_in_sight

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "electrical", "disconnect_in_sight"]] if some i, s in input.systems

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
	s.electrical.disconnect_in_sight == true
}

deficient contains [s.id, ["systems", i, "electrical", "disconnect_in_sight"]] if {
	some i, s in input.systems
	s.id in judged
	s.electrical.disconnect_in_sight == false
}

missing contains gap if some gap in wiring.unsaid

missing contains gap if some gap in wiring.unplaced
missing contains gap if some gap in wiring.unwired

missing contains [s.id, ["systems", i, "electrical", "disconnect_in_sight"]] if {
	some i, s in input.systems
	not is_boolean(s.electrical.disconnect_in_sight)
}
