# METADATA
# title: The last reading is close to the start-up mark
# description: A reading that has moved far says that the fan, the pipe or the ground under the house has changed.
# custom:
#   subject: gauge
#   grade: required
#   stage: running
#   remedy: Look for a worn fan, water in the pipe, a leak or a new opening, mend it, and mark the gauge anew once the system works as designed.
#   caution: Wiring and work on a running fan are for licensed people; cut the power and prove it dead first.
#   limits:
#     fall: {dimension: ratio, sense: more-than}
#     rise: {dimension: ratio, sense: less-than}
#     kinds: {dimension: choice, sense: applies-to}
package policy.gauge.steady

import data.policy.gauges
import rego.v2

limits := data.profile.gauge.steady

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "start_mark"]] if some i, s in input.systems

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
	d.gauge_change.si > limits.fall.si
	d.gauge_change.si < limits.rise.si
}

deficient contains [d.id, ["derived", "systems", i, "gauge_change"], "fall"] if {
	some i, d in input.derived.systems
	d.id in judged
	d.gauge_change.si <= limits.fall.si
}

deficient contains [d.id, ["derived", "systems", i, "gauge_change"], "rise"] if {
	some i, d in input.derived.systems
	d.id in judged
	d.gauge_change.si >= limits.rise.si
}

missing contains gap if some gap in gauges.unsaid

missing contains gap if some gap in gauges.unread

missing contains [d.id, ["derived", "systems", i, "gauge_change"]] if {
	some i, d in input.derived.systems
	not is_number(d.gauge_change.si)
}
