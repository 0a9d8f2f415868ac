# METADATA
# title: The alarm was tried with the fan off
# description: A switch set wrong or a hose on the wrong port shows only when the fan stops.
# custom:
#   subject: alarm
#   grade: recommended
#   stage: running
#   remedy: Switch the fan off, wait for the alarm, and switch the fan on again.
#   caution: Cut the power at the disconnect; leave wiring to licensed people.
package policy.alarm.tested

import data.policy.alarms
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "alarm", "tested"]] if some i, s in input.systems

exempt contains outcome if some outcome in alarms.absent

met contains s.id if {
	some s in input.systems
	s.id in alarms.fitted
	s.alarm.tested == true
}

deficient contains [s.id, ["systems", i, "alarm", "tested"]] if {
	some i, s in input.systems
	s.id in alarms.fitted
	s.alarm.tested == false
}

missing contains gap if some gap in alarms.unsaid

missing contains [s.id, ["systems", i, "alarm", "tested"]] if {
	some i, s in input.systems
	not is_boolean(s.alarm.tested)
}
