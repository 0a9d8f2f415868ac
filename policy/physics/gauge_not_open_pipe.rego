# METADATA
# title: The fan works against some resistance
# description: A pipe that came apart or a lid left off pulls the air of the basement, and the soil gas stays where it was.
# custom:
#   subject: gauge
#   grade: recommended
#   stage: running
#   remedy: Look for an open joint, a missing lid or a hole that was never sealed, close it and read the gauge again.
#   caution: Wiring and work on a running fan are for licensed people; cut the power and prove it dead first.
#   limits:
#     minimum: {dimension: ratio, sense: more-than}
package policy.physics.gauge_not_open_pipe

import data.policy.airways
import data.policy.readings
import rego.v2

limits := data.profile.physics.gauge_not_open_pipe

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "gauge_share"]] if some i, s in input.systems

exempt contains outcome if some outcome in readings.aside

exempt contains [d.id, "the reading is below zero, which another requirement judges"] if {
	some d in input.derived.systems
	d.id in readings.known
	d.gauge_reading.si < 0
}

met contains d.id if {
	some d in input.derived.systems
	d.id in readings.known
	airways.sited
	d.gauge_share.si > limits.minimum.si
}

deficient contains [d.id, ["derived", "systems", i, "gauge_share"], "minimum"] if {
	some i, d in input.derived.systems
	d.id in readings.known
	airways.sited
	d.gauge_share.si <= limits.minimum.si
}

missing contains gap if some gap in readings.unsaid

missing contains [s.id, ["house", "altitude"]] if {
	some s in input.systems
	not airways.sited
}

missing contains [d.id, ["derived", "systems", i, "gauge_share"]] if {
	some i, d in input.derived.systems
	not is_number(d.gauge_share.si)
}
