# METADATA
# title: The circuit of a hard-wired fan has a switch or breaker for service
# description: Whoever changes the fan must be able to make it dead first.
# custom:
#   subject: system
#   grade: hazard
#   stage: running
#   remedy: Have a disconnect fitted by a licensed electrician.
#   caution: Wiring is work for licensed people; cut the power and prove it dead first.
#   limits:
#     allowed: {dimension: choice, sense: one-of}
package policy.electrical.disconnect

import data.policy.wiring
import rego.v2

limits := data.profile.electrical.disconnect

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "electrical", "disconnect"]] if some i, s in input.systems

exempt contains outcome if some outcome in wiring.outside

exempt contains [s.id, "its plug cuts the fan off"] if {
	some s in input.systems
	s.id in wiring.plugged
}

judged contains s.id if {
	some s in input.systems
	s.id in wiring.judged
	s.id in wiring.fixed
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.electrical.disconnect in limits.allowed.any_of
}

deficient contains [s.id, ["systems", i, "electrical", "disconnect"], "allowed"] if {
	some i, s in input.systems
	s.id in judged
	is_string(s.electrical.disconnect)
	not s.electrical.disconnect in limits.allowed.any_of
}

missing contains gap if some gap in wiring.unsaid

missing contains gap if some gap in wiring.unwired

missing contains [s.id, ["systems", i, "electrical", "disconnect"]] if {
	some i, s in input.systems
	not is_string(s.electrical.disconnect)
}
