# METADATA
# title: No heated or cooled rooms lie above an indoor fan
# description: What leaks from a fan in a garage or attic rises into the rooms above it.
# custom:
#   subject: fan
#   grade: hazard
#   stage: roughed-in
#   remedy: Move the fan to a place without rooms above, or outdoors.
#   caution: Wiring and work on a running fan are for licensed people; cut the power and prove it dead first.
#   limits:
#     outdoors: {dimension: choice, sense: one-of}
package policy.fan.not_under_rooms

import data.policy.systems
import rego.v2

outdoors := data.profile.fan.not_under_rooms.outdoors.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "under_conditioned_space"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "the fan is outdoors"] if {
	some s in input.systems
	s.fan.place in outdoors
}

indoors contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	is_string(s.fan.place)
	not s.fan.place in outdoors
}

met contains s.id if {
	some s in input.systems
	s.id in indoors
	s.fan.under_conditioned_space == false
}

deficient contains [s.id, ["systems", i, "fan", "under_conditioned_space"]] if {
	some i, s in input.systems
	s.id in indoors
	s.fan.under_conditioned_space == true
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "fan", "place"]] if {
	some i, s in input.systems
	not is_string(s.fan.place)
}

missing contains [s.id, ["systems", i, "fan", "under_conditioned_space"]] if {
	some i, s in input.systems
	not is_boolean(s.fan.under_conditioned_space)
}
