# METADATA
# title: No rain cap sits on the outlet
# description: A cap turns the jet down at the roof, and in frost it grows ice until the pipe is shut.
# custom:
#   subject: outlet
#   grade: required
#   stage: roughed-in
#   remedy: Take the cap off; the little rain that falls in drains back to the soil.
#   limits:
#     not_for: {dimension: choice, sense: not-for}
package policy.exhaust.no_rain_cap

import data.policy.systems
import rego.v2

not_for := data.profile.exhaust.no_rain_cap.not_for.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "rain_cap"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "its source does not speak of systems driven this way"] if {
	some s in input.systems
	s.powered_by in not_for
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	is_string(s.powered_by)
	not s.powered_by in not_for
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.discharge.rain_cap == false
}

deficient contains [s.id, ["systems", i, "discharge", "rain_cap"]] if {
	some i, s in input.systems
	s.id in judged
	s.discharge.rain_cap == true
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "discharge", "rain_cap"]] if {
	some i, s in input.systems
	not is_boolean(s.discharge.rain_cap)
}
