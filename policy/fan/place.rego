# METADATA
# title: The fan sits in a place where a leak does no harm
# description: The fan and the pipe after it leak sooner or later, and what leaks is undiluted soil gas.
# custom:
#   subject: fan
#   grade: hazard
#   stage: roughed-in
#   remedy: Move the fan to one of the places allowed, with everything indoors on its suction side.
#   caution: Wiring and work on a running fan are for licensed people; cut the power and prove it dead first.
#   limits:
#     allowed: {dimension: choice, sense: one-of}
package policy.fan.place

import data.policy.systems
import rego.v2

allowed := data.profile.fan.place.allowed.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "place"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.fan.place in allowed
}

deficient contains [s.id, ["systems", i, "fan", "place"], "allowed"] if {
	some i, s in input.systems
	s.id in systems.with_fan
	is_string(s.fan.place)
	not s.fan.place in allowed
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "fan", "place"]] if {
	some i, s in input.systems
	not is_string(s.fan.place)
}
