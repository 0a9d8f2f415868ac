# METADATA
# title: The fan's circuit is not overloaded, or is its own
# description: An overloaded breaker trips, and a fan that is off for a week is not missed.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Have the fan moved to a circuit of its own.
#   caution: Wiring is work for licensed people; cut the power and prove it dead first.
#   limits:
#     fan: {dimension: ratio, sense: at-most}
#     total: {dimension: ratio, sense: at-most}
package policy.electrical.circuit_load

import data.policy.wiring
import rego.v2

limits := data.profile.electrical.circuit_load

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "electrical", "circuit_other_load"]] if some i, s in input.systems

exempt contains outcome if some outcome in wiring.outside

light contains d.id if {
	some d in input.derived.systems
	d.circuit_share_fan.si <= limits.fan.si
	d.circuit_share_total.si <= limits.total.si
}

met contains s.id if {
	some s in input.systems
	s.id in wiring.judged
	s.electrical.circuit_dedicated == true
}

met contains s.id if {
	some s in input.systems
	s.id in wiring.judged
	s.id in light
}

deficient contains [d.id, ["derived", "systems", i, "circuit_share_fan"], "fan"] if {
	some i, d in input.derived.systems
	d.id in wiring.judged
	d.id in shared
	d.circuit_share_fan.si > limits.fan.si
}

deficient contains [d.id, ["derived", "systems", i, "circuit_share_total"], "total"] if {
	some i, d in input.derived.systems
	d.id in wiring.judged
	d.id in shared
	d.circuit_share_total.si > limits.total.si
}

shared contains s.id if {
	some s in input.systems
	s.electrical.circuit_dedicated == false
}

missing contains gap if some gap in wiring.unsaid

missing contains [s.id, ["systems", i, "electrical", "circuit_dedicated"]] if {
	some i, s in input.systems
	not is_boolean(s.electrical.circuit_dedicated)
}

missing contains [d.id, ["derived", "systems", i, "circuit_share_fan"]] if {
	some i, d in input.derived.systems
	not is_number(d.circuit_share_fan.si)
}

missing contains [d.id, ["derived", "systems", i, "circuit_share_total"]] if {
	some i, d in input.derived.systems
	not is_number(d.circuit_share_total.si)
}
