# METADATA
# title: The pipe is held close to an attic fan
# description: An attic fan on free pipe sways until a coupling walks off, and then blows soil gas into the attic.
# custom:
#   subject: fan
#   grade: recommended
#   stage: roughed-in
#   remedy: Add a support above and below the fan within the distance called for.
#   limits:
#     maximum: {dimension: length, sense: at-most}
#     places: {dimension: choice, sense: one-of}
package policy.fan.supports_nearby

import data.policy.systems
import rego.v2

limits := data.profile.fan.supports_nearby

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "nearest_supports"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "the fan is not in an attic"] if {
	some s in input.systems
	is_string(s.fan.place)
	not s.fan.place in limits.places.any_of
}

in_attic contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.fan.place in limits.places.any_of
}

met contains s.id if {
	some s in input.systems
	s.id in in_attic
	s.fan.nearest_supports.si <= limits.maximum.si
}

deficient contains [s.id, ["systems", i, "fan", "nearest_supports"], "maximum"] if {
	some i, s in input.systems
	s.id in in_attic
	s.fan.nearest_supports.si > limits.maximum.si
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "fan", "place"]] if {
	some i, s in input.systems
	not is_string(s.fan.place)
}

missing contains [s.id, ["systems", i, "fan", "nearest_supports"]] if {
	some i, s in input.systems
	not is_number(s.fan.nearest_supports.si)
}
