# METADATA
# title: A fan outdoors has fixed wiring
# description: A plug in the rain trips, corrodes or shocks, and a plug can be pulled.
# custom:
#   subject: system
#   grade: hazard
#   stage: running
#   remedy: Have the fan wired in by a licensed electrician.
#   caution: Wiring is work for licensed people; cut the power and prove it dead first.
#   limits:
#     outdoors: {dimension: choice, sense: one-of}
#     exceptions: {dimension: choice, sense: one-of}
package policy.electrical.exterior_hard_wired

import data.policy.wiring
import rego.v2

limits := data.profile.electrical.exterior_hard_wired

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "electrical", "connection"]] if some i, s in input.systems

exempt contains outcome if some outcome in wiring.outside

exempt contains [s.id, "the fan is not outdoors"] if {
	some s in input.systems
	is_string(s.fan.place)
	not s.fan.place in limits.outdoors.any_of
}

judged contains s.id if {
	some s in input.systems
	s.id in wiring.judged
	s.fan.place in limits.outdoors.any_of
}

housing_counts if "weatherproof-housing" in limits.exceptions.any_of

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.id in wiring.fixed
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	housing_counts
	s.id in wiring.plugged
	s.fan.housing_weatherproof == true
}

deficient contains [s.id, ["systems", i, "electrical", "connection"]] if {
	some i, s in input.systems
	s.id in judged
	not housing_counts
	s.id in wiring.plugged
}

deficient contains [s.id, ["systems", i, "electrical", "connection"]] if {
	some i, s in input.systems
	s.id in judged
	housing_counts
	s.id in wiring.plugged
	s.fan.housing_weatherproof == false
}

missing contains gap if some gap in wiring.unsaid

missing contains gap if some gap in wiring.unplaced
missing contains gap if some gap in wiring.unwired

missing contains [s.id, ["systems", i, "fan", "housing_weatherproof"]] if {
	some i, s in input.systems
	housing_counts
	s.id in wiring.plugged
	not is_boolean(s.fan.housing_weatherproof)
}
