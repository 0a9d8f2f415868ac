# METADATA
# title: The gauge reads within its scale
# description: Past the end of the scale the gauge says only that there is more, and a dying fan can hide behind that for years.
# custom:
#   subject: gauge
#   grade: required
#   stage: running
#   remedy: Read again; fit a gauge whose scale reaches beyond what the fan can give.
package policy.physics.gauge_within_scale

import data.policy.readings
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "gauge_reading"]] if some i, s in input.systems

exempt contains outcome if some outcome in readings.aside

within contains [s.id, "inside"] if {
	some s in input.systems
	s.id in readings.known
	some d in input.derived.systems
	d.id == s.id
	d.gauge_reading.si < s.gauge.range.si
}

within contains [s.id, "at its end"] if {
	some s in input.systems
	s.id in readings.known
	some d in input.derived.systems
	d.id == s.id
	d.gauge_reading.si == s.gauge.range.si
}

within contains [s.id, "beyond"] if {
	some s in input.systems
	s.id in readings.known
	some d in input.derived.systems
	d.id == s.id
	d.gauge_reading.si > s.gauge.range.si
}

met contains id if some [id, "inside"] in within

deficient contains [d.id, ["derived", "systems", i, "gauge_reading"]] if {
	some i, d in input.derived.systems
	[d.id, "beyond"] in within
}

undetermined contains [d.id, ["derived", "systems", i, "gauge_reading"], "at the end of the scale the reading is only the least that it can be"] if {
	some i, d in input.derived.systems
	[d.id, "at its end"] in within
}

undetermined contains [s.id, ["systems", i, "gauge", "range"], "the end of its scale is not recorded"] if {
	some i, s in input.systems
	s.id in readings.known
	not is_number(s.gauge.range.si)
}

missing contains gap if some gap in readings.unsaid
