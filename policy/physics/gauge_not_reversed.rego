# METADATA
# title: The gauge shows suction, not pressure
# description: A tube on the wrong side or the wrong pipe moves the columns too, and everyone believes that the system works.
# custom:
#   subject: gauge
#   grade: required
#   stage: running
#   remedy: Check which side of the gauge the tube is on and that it enters the pipe before the fan.
#   limits:
#     least: {dimension: pressure, sense: at-least}
#     wrong_taps: {dimension: choice, sense: none-of}
package policy.physics.gauge_not_reversed

import data.policy.readings
import rego.v2

limits := data.profile.physics.gauge_not_reversed

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "gauge_reading"]] if some i, s in input.systems

exempt contains outcome if some outcome in readings.aside

judged contains s.id if {
	some s in input.systems
	s.id in readings.known
	is_array(limits.wrong_taps.any_of)
}

met contains d.id if {
	some d in input.derived.systems
	d.id in judged
	d.gauge_reading.si >= limits.least.si
	some s in input.systems
	s.id == d.id
	is_string(s.gauge.tap)
	not s.gauge.tap in limits.wrong_taps.any_of
}

deficient contains [d.id, ["derived", "systems", i, "gauge_reading"], "least"] if {
	some i, d in input.derived.systems
	d.id in judged
	d.gauge_reading.si < limits.least.si
}

deficient contains [s.id, ["systems", i, "gauge", "tap"], "wrong_taps"] if {
	some i, s in input.systems
	s.id in judged
	s.gauge.tap in limits.wrong_taps.any_of
}

undetermined contains [s.id, ["systems", i, "gauge", "tap"], "where its tube enters the pipe is not recorded"] if {
	some i, s in input.systems
	s.id in judged
	not is_string(s.gauge.tap)
}

missing contains gap if some gap in readings.unsaid
