# METADATA
# title: The fan joins the pipe by couplings that are tight and come off again
# description: A fan that is glued in is cut out when it fails, and the pipe with it; tape lets go in the first summer.
# custom:
#   subject: fan
#   grade: required
#   stage: running
#   remedy: Fit flexible couplings and tighten their clamps on both sides of the fan.
#   limits:
#     allowed: {dimension: choice, sense: one-of}
package policy.fan.couplings

import data.policy.systems
import rego.v2

allowed := data.profile.fan.couplings.allowed.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "couplings"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.fan.couplings in allowed
}

deficient contains [s.id, ["systems", i, "fan", "couplings"], "allowed"] if {
	some i, s in input.systems
	s.id in systems.with_fan
	is_string(s.fan.couplings)
	not s.fan.couplings in allowed
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "fan", "couplings"]] if {
	some i, s in input.systems
	not is_string(s.fan.couplings)
}
