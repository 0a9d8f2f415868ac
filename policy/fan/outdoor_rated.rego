# METADATA
# title: A fan outdoors is made for outdoors or sits in a weatherproof housing
# description: Rain in the wiring compartment is a shock and a fire, and the end of the fan.
# custom:
#   subject: fan
#   grade: hazard
#   stage: running
#   remedy: Fit a fan rated for outdoor use, or a weatherproof housing round this one.
#   caution: Wiring and work on a running fan are for licensed people; cut the power and prove it dead first.
#   limits:
#     outdoors: {dimension: choice, sense: one-of}
package policy.fan.outdoor_rated

import data.policy.systems
import rego.v2

outdoors := data.profile.fan.outdoor_rated.outdoors.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "outdoor_rated"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "the fan is not outdoors"] if {
	some s in input.systems
	is_string(s.fan.place)
	not s.fan.place in outdoors
}

exposed contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.fan.place in outdoors
}

met contains s.id if {
	some s in input.systems
	s.id in exposed
	s.fan.outdoor_rated == true
}

met contains s.id if {
	some s in input.systems
	s.id in exposed
	s.fan.housing_weatherproof == true
}

deficient contains [s.id, ["systems", i, "fan", "outdoor_rated"]] if {
	some i, s in input.systems
	s.id in exposed
	s.fan.outdoor_rated == false
	s.fan.housing_weatherproof == false
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "fan", "place"]] if {
	some i, s in input.systems
	not is_string(s.fan.place)
}

missing contains [s.id, ["systems", i, "fan", "outdoor_rated"]] if {
	some i, s in input.systems
	not is_boolean(s.fan.outdoor_rated)
}

missing contains [s.id, ["systems", i, "fan", "housing_weatherproof"]] if {
	some i, s in input.systems
	s.fan.outdoor_rated == false
	not is_boolean(s.fan.housing_weatherproof)
}
