# METADATA
# title: No reading with the fan on is older than the fan's first start
# description: A reading from before the start was made up or copied, and the family relies on it.
# custom:
#   subject: reading
#   grade: required
#   stage: running
#   remedy: Look up when the fan first ran and when the gauge was read, and correct the record or read again.
package policy.physics.reading_after_start

import data.policy.gauges
import data.policy.readings
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "readings"]] if {
	some i, s in input.systems
	not is_array(s.gauge.readings)
}

subjects contains [r.id, ["systems", i, "gauge", "readings", j, "at"]] if {
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

exempt contains [r.id, "the fan was off"] if {
	some s in input.systems
	some r in s.gauge.readings
	r.fan_on == false
}

judged contains r.id if {
	some s in input.systems
	s.id in gauges.shown
	s.gauge.kind in readings.suction_kinds
	some r in s.gauge.readings
	r.fan_on == true
}

met contains r.id if {
	some s in input.systems
	some r in s.gauge.readings
	r.id in judged
	r.at.si >= s.fan.started.si
}

deficient contains [r.id, ["systems", i, "gauge", "readings", j, "at"]] if {
	some i, s in input.systems
	some j, r in s.gauge.readings
	r.id in judged
	r.at.si < s.fan.started.si
}

undetermined contains [r.id, ["systems", i, "gauge", "readings", j, "at"], "it is not recorded when the gauge was read"] if {
	some i, s in input.systems
	some j, r in s.gauge.readings
	r.id in judged
	not is_number(r.at.si)
}

undetermined contains [r.id, ["systems", i, "fan", "started"], "it is not recorded when the fan first ran"] if {
	some i, s in input.systems
	some r in s.gauge.readings
	r.id in judged
	not is_number(s.fan.started.si)
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
