# METADATA
# title: An outlet outdoors is made for weather and covered while in use
# description: Rain in a socket is a shock waiting for whoever pulls the plug.
# custom:
#   subject: system
#   grade: hazard
#   stage: running
#   remedy: Have a weather-resistant outlet with an in-use cover fitted.
#   caution: Wiring is work for licensed people; cut the power and prove it dead first.
#   limits:
#     outdoors: {dimension: choice, sense: one-of}
package policy.electrical.outdoor_outlet

import data.policy.wiring
import rego.v2

limits := data.profile.electrical.outdoor_outlet

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "electrical", "outlet_weatherproof"]] if some i, s in input.systems

exempt contains outcome if some outcome in wiring.outside

exempt contains [s.id, "the fan is hard-wired"] if {
	some s in input.systems
	s.id in wiring.fixed
}

exempt contains [s.id, "the fan is not outdoors"] if {
	some s in input.systems
	is_string(s.fan.place)
	not s.fan.place in limits.outdoors.any_of
}

judged contains s.id if {
	some s in input.systems
	s.id in wiring.judged
	s.id in wiring.plugged
	s.fan.place in limits.outdoors.any_of
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.electrical.outlet_weatherproof == true
}

deficient contains [s.id, ["systems", i, "electrical", "outlet_weatherproof"]] if {
	some i, s in input.systems
	s.id in judged
	s.electrical.outlet_weatherproof == false
}

missing contains gap if some gap in wiring.unsaid

missing contains gap if some gap in wiring.unplaced
missing contains gap if some gap in wiring.unwired

missing contains [s.id, ["systems", i, "electrical", "outlet_weatherproof"]] if {
	some i, s in input.systems
	not is_boolean(s.electrical.outlet_weatherproof)
}
