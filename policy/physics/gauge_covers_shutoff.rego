# METADATA
# title: The scale of the gauge reaches as far as the fan can pull
# description: When the pipe blocks, the reading should climb and be read, not vanish past the end of the tube.
# custom:
#   subject: gauge
#   grade: recommended
#   stage: running
#   remedy: Fit a gauge whose scale reaches beyond the fan's shut-off pressure.
package policy.physics.gauge_covers_shutoff

import data.policy.airways
import data.policy.gauges
import data.policy.readings
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "range"]] if some i, s in input.systems

exempt contains outcome if some outcome in readings.aside

met contains s.id if {
	some s in input.systems
	s.gauge.kind in readings.suction_kinds
	airways.sited
	some d in input.derived.systems
	d.id == s.id
	s.gauge.range.si >= d.shutoff_pressure.si
}

deficient contains [s.id, ["systems", i, "gauge", "range"]] if {
	some i, s in input.systems
	s.gauge.kind in readings.suction_kinds
	airways.sited
	some d in input.derived.systems
	d.id == s.id
	s.gauge.range.si < d.shutoff_pressure.si
}

missing contains gap if some gap in gauges.unsaid

missing contains [s.id, ["systems", i, "gauge", "range"]] if {
	some i, s in input.systems
	not is_number(s.gauge.range.si)
}

missing contains [s.id, ["house", "altitude"]] if {
	some s in input.systems
	not airways.sited
}

missing contains [d.id, ["derived", "systems", i, "shutoff_pressure"]] if {
	some i, d in input.derived.systems
	not is_number(d.shutoff_pressure.si)
}
