# METADATA
# title: A rain cap has a local reason
# description: A cap costs lift and gathers ice; only falling debris or driving storms make up for that.
# custom:
#   subject: outlet
#   grade: recommended
#   stage: running
#   remedy: Take the cap off and fit mesh or a rain diverter instead, or write down what here calls for a cap.
#   limits:
#     no_reason: {dimension: choice, sense: none-of}
package policy.exhaust.rain_cap_justified

import data.policy.systems
import rego.v2

no_reason := data.profile.exhaust.rain_cap_justified.no_reason.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "rain_cap_reason"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "no cap sits on the outlet"] if {
	some s in input.systems
	s.discharge.rain_cap == false
}

capped contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.discharge.rain_cap == true
}

met contains s.id if {
	some s in input.systems
	s.id in capped
	is_string(s.discharge.rain_cap_reason)
	not lower(s.discharge.rain_cap_reason) in no_reason
}

deficient contains [s.id, ["systems", i, "discharge", "rain_cap_reason"], "no_reason"] if {
	some i, s in input.systems
	s.id in capped
	lower(s.discharge.rain_cap_reason) in no_reason
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "discharge", "rain_cap"]] if {
	some i, s in input.systems
	not is_boolean(s.discharge.rain_cap)
}

missing contains [s.id, ["systems", i, "discharge", "rain_cap_reason"]] if {
	some i, s in input.systems
	not is_string(s.discharge.rain_cap_reason)
}
