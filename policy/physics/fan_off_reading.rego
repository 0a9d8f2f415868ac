# METADATA
# title: With the fan off the gauge falls back to almost nothing
# description: A gauge that stays up with the fan off is stuck, and will stay up on the day the fan dies.
# custom:
#   subject: reading
#   grade: recommended
#   stage: running
#   remedy: Free or replace the gauge, check its zero, and read it again with the fan off.
#   caution: Wiring and work on a running fan are for licensed people; cut the power and prove it dead first.
#   limits:
#     most: {dimension: pressure, sense: at-most}
package policy.physics.fan_off_reading

import data.policy.readings
import rego.v2

limits := data.profile.physics.fan_off_reading

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "readings"]] if {
	some i, s in input.systems
	not is_array(s.gauge.readings)
}

subjects contains [r.id, ["systems", i, "gauge", "readings", j, "value"]] if {
	some i, s in input.systems
	some j, r in s.gauge.readings
}

exempt contains [s.id, reason] if {
	some s in input.systems
	not is_array(s.gauge.readings)
	some [id, reason] in readings.aside
	id == s.id
}

exempt contains [r.id, reason] if {
	some s in input.systems
	some r in s.gauge.readings
	some [id, reason] in readings.aside
	id == s.id
}

exempt contains [r.id, "the fan was on"] if {
	some s in input.systems
	some r in s.gauge.readings
	r.fan_on == true
}

judged contains r.id if {
	some s in input.systems
	s.gauge.kind in readings.suction_kinds
	some r in s.gauge.readings
	r.fan_on == false
}

met contains r.id if {
	some s in input.systems
	some r in s.gauge.readings
	r.id in judged
	r.value.si <= limits.most.si
}

deficient contains [r.id, ["systems", i, "gauge", "readings", j, "value"], "most"] if {
	some i, s in input.systems
	some j, r in s.gauge.readings
	r.id in judged
	r.value.si > limits.most.si
}

missing contains [r.id, ["systems", i, "gauge", "kind"]] if {
	some i, s in input.systems
	some r in s.gauge.readings
	not is_string(s.gauge.kind)
}

missing contains [r.id, ["systems", i, "gauge", "readings", j, "fan_on"]] if {
	some i, s in input.systems
	some j, r in s.gauge.readings
	not is_boolean(r.fan_on)
}

missing contains [r.id, ["systems", i, "gauge", "readings", j, "value"]] if {
	some i, s in input.systems
	some j, r in s.gauge.readings
	not is_number(r.value.si)
}
