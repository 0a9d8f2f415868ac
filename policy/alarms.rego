# METADATA
# description: |
#   Which systems with a fan have an alarm and what it runs on, which have none,
#   and of which nobody wrote that down.
package policy.alarms

import data.policy.systems
import rego.v2

fitted contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	is_string(s.alarm.kind)
	s.alarm.kind != "none"
}

absent contains outcome if some outcome in systems.without_fan

absent contains [s.id, "there is no alarm"] if {
	some s in input.systems
	s.alarm.kind == "none"
}

# Alarms by what they run on: [system, power].
power contains [s.id, s.alarm.power] if {
	some s in input.systems
	s.id in fitted
	is_string(s.alarm.power)
}

unsaid contains gap if some gap in systems.unsaid

unsaid contains [s.id, ["systems", i, "alarm", "kind"]] if {
	some i, s in input.systems
	not is_string(s.alarm.kind)
}

# The same for rules that depend on what the alarm runs on.
powerless contains gap if some gap in unsaid

powerless contains [s.id, ["systems", i, "alarm", "power"]] if {
	some i, s in input.systems
	not is_string(s.alarm.power)
}
