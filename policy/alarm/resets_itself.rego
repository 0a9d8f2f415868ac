# METADATA
# title: The alarm is on duty again by itself when power returns
# description: Nobody thinks of the radon alarm after a power cut.
# custom:
#   subject: alarm
#   grade: required
#   stage: running
#   remedy: Fit an alarm that resets itself when the power is back.
#   caution: Wiring is for licensed people.
#   limits:
#     powers: {dimension: choice, sense: one-of}
package policy.alarm.resets_itself

import data.policy.alarms
import rego.v2

powers := data.profile.alarm.resets_itself.powers.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "alarm", "resets_itself"]] if some i, s in input.systems

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
	s.alarm.resets_itself == true
}

deficient contains [s.id, ["systems", i, "alarm", "resets_itself"]] if {
	some i, s in input.systems
	s.id in judged
	s.alarm.resets_itself == false
}

missing contains gap if some gap in alarms.powerless

missing contains [s.id, ["systems", i, "alarm", "resets_itself"]] if {
	some i, s in input.systems
	not is_boolean(s.alarm.resets_itself)
}
