# METADATA
# title: No switch cuts off the alarm
# description: An alarm behind a light switch is silent most of the day.
# custom:
#   subject: alarm
#   grade: required
#   stage: running
#   remedy: Have the alarm fed from a circuit without a switch.
#   caution: Wiring is for licensed people.
#   limits:
#     powers: {dimension: choice, sense: one-of}
package policy.alarm.unswitched

import data.policy.alarms
import rego.v2

powers := data.profile.alarm.unswitched.powers.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "alarm", "unswitched_circuit"]] if some i, s in input.systems

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
	s.alarm.unswitched_circuit == true
}

deficient contains [s.id, ["systems", i, "alarm", "unswitched_circuit"]] if {
	some i, s in input.systems
	s.id in judged
	s.alarm.unswitched_circuit == false
}

missing contains gap if some gap in alarms.powerless

missing contains [s.id, ["systems", i, "alarm", "unswitched_circuit"]] if {
	some i, s in input.systems
	not is_boolean(s.alarm.unswitched_circuit)
}
