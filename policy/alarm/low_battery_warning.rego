# METADATA
# title: An alarm on batteries says when they run down
# description: An alarm with an empty battery is as quiet as one that has nothing to report.
# custom:
#   subject: alarm
#   grade: required
#   stage: running
#   remedy: Fit an alarm that warns of a low battery, or one on mains power.
#   caution: Wiring is for licensed people.
#   limits:
#     powers: {dimension: choice, sense: one-of}
package policy.alarm.low_battery_warning

import data.policy.alarms
import rego.v2

powers := data.profile.alarm.low_battery_warning.powers.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "alarm", "low_battery_warning"]] if some i, s in input.systems

exempt contains outcome if some outcome in alarms.absent

exempt contains [s.id, "the alarm runs on something else"] if {
	some s in input.systems
	is_string(s.alarm.power)
	not s.alarm.power in powers
}

judged contains id if {
	some [id, power] in alarms.power
	power in powers
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.alarm.low_battery_warning == true
}

deficient contains [s.id, ["systems", i, "alarm", "low_battery_warning"]] if {
	some i, s in input.systems
	s.id in judged
	s.alarm.low_battery_warning == false
}

missing contains gap if some gap in alarms.powerless

missing contains [s.id, ["systems", i, "alarm", "low_battery_warning"]] if {
	some i, s in input.systems
	not is_boolean(s.alarm.low_battery_warning)
}
