# METADATA
# title: The gauge shows more than a pipe draws without its fan
# description: A warm pipe alone moves the columns a little; so little suction with the fan on means that nobody is protected.
# custom:
#   subject: gauge
#   grade: required
#   stage: running
#   remedy: Check that the fan turns, that the tube is on and not pinched, and that the gauge holds its liquid.
#   caution: Wiring and work on a running fan are for licensed people; cut the power and prove it dead first.
#   limits:
#     least: {dimension: pressure, sense: at-least}
package policy.physics.gauge_above_natural_draft

import data.policy.readings
import rego.v2

limits := data.profile.physics.gauge_above_natural_draft

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "gauge_reading"]] if some i, s in input.systems

exempt contains outcome if some outcome in readings.aside

exempt contains [d.id, "the reading is below zero, which another requirement judges"] if {
	some d in input.derived.systems
	d.id in readings.known
	d.gauge_reading.si < 0
}

met contains d.id if {
	some d in input.derived.systems
	d.id in readings.known
	d.gauge_reading.si >= limits.least.si
}

deficient contains [d.id, ["derived", "systems", i, "gauge_reading"], "least"] if {
	some i, d in input.derived.systems
	d.id in readings.known
	d.gauge_reading.si < limits.least.si
}

missing contains gap if some gap in readings.unsaid
