# METADATA
# title: With the fan on the gauge shows suction
# description: Level columns mean that nothing holds the soil gas back, whatever the fan sounds like.
# custom:
#   subject: gauge
#   grade: hazard
#   stage: running
#   remedy: Look for a stopped fan, a pulled hose, a leak or a blocked pipe, mend it and read the gauge again.
#   caution: Wiring and work on a running fan are for licensed people; cut the power and prove it dead first.
#   limits:
#     above: {dimension: pressure, sense: more-than}
#     kinds: {dimension: choice, sense: applies-to}
package policy.gauge.shows_suction

import data.policy.gauges
import rego.v2

limits := data.profile.gauge.shows_suction

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "readings"]] if some i, s in input.systems

exempt contains outcome if some outcome in gauges.absent

exempt contains [s.id, "a gauge of this kind shows no pressure"] if {
	some s in input.systems
	is_string(s.gauge.kind)
	not s.gauge.kind in limits.kinds.any_of
}

judged contains s.id if {
	some s in input.systems
	s.id in gauges.shown
	s.gauge.kind in limits.kinds.any_of
	s.id in gauges.read
}

met contains d.id if {
	some d in input.derived.systems
	d.id in judged
	d.gauge_reading.si > limits.above.si
}

deficient contains [d.id, ["derived", "systems", i, "gauge_reading"], "above"] if {
	some i, d in input.derived.systems
	d.id in judged
	d.gauge_reading.si <= limits.above.si
}

missing contains gap if some gap in gauges.unsaid

missing contains gap if some gap in gauges.unread

missing contains [d.id, ["derived", "systems", i, "gauge_reading"]] if {
	some i, d in input.derived.systems
	not is_number(d.gauge_reading.si)
}
