# METADATA
# title: Power is within reach where a failure alarm is expected
# description: Whoever adds the alarm later will not open walls to feed it.
# custom:
#   subject: system
#   grade: required
#   stage: roughed-in
#   remedy: Have an outlet or box put where the alarm will hang.
#   caution: Wiring is for licensed people.
#   limits:
#     not_for: {dimension: choice, sense: not-for}
package policy.alarm.power_in_reach

import data.policy.houses
import data.policy.systems
import rego.v2

not_for := data.profile.alarm.power_in_reach.not_for.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "electrical", "alarm_outlet_provided"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(not_for)
}

met contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	houses.meant(not_for)
	s.electrical.alarm_outlet_provided == true
}

deficient contains [s.id, ["systems", i, "electrical", "alarm_outlet_provided"]] if {
	some i, s in input.systems
	s.kind in systems.soil_kinds
	houses.meant(not_for)
	s.electrical.alarm_outlet_provided == false
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(not_for)
}

missing contains [s.id, ["systems", i, "electrical", "alarm_outlet_provided"]] if {
	some i, s in input.systems
	not is_boolean(s.electrical.alarm_outlet_provided)
}
