# METADATA
# title: An outside stack is held close to its end
# description: The free end works in the wind until a joint opens or a strap pulls out.
# custom:
#   subject: outlet
#   grade: recommended
#   stage: roughed-in
#   remedy: Add a strap or bracket within this distance of the open end.
#   caution: Work from a ladder that is set and tied, away from power lines.
#   limits:
#     maximum: {dimension: length, sense: at-most}
package policy.exhaust.support_near_outlet

import data.policy.systems
import rego.v2

maximum := data.profile.exhaust.support_near_outlet.maximum.si

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "support_distance"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "the pipe does not run up an outside wall"] if {
	some s in input.systems
	is_string(s.discharge.mounting)
	s.discharge.mounting != "exterior-wall"
}

judged contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.discharge.mounting == "exterior-wall"
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.discharge.support_distance.si <= maximum
}

deficient contains [s.id, ["systems", i, "discharge", "support_distance"], "maximum"] if {
	some i, s in input.systems
	s.id in judged
	s.discharge.support_distance.si > maximum
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "discharge", "mounting"]] if {
	some i, s in input.systems
	not is_string(s.discharge.mounting)
}

missing contains [s.id, ["systems", i, "discharge", "support_distance"]] if {
	some i, s in input.systems
	not is_number(s.discharge.support_distance.si)
}
