# METADATA
# title: The start-up mark is the first reading with the fan on
# description: A mark copied from another job makes a failing system look well.
# custom:
#   subject: gauge
#   grade: required
#   stage: running
#   remedy: Compare mark and first reading, find out which is wrong, and mark the gauge anew.
#   limits:
#     difference: {dimension: pressure, sense: at-most}
#     kinds: {dimension: choice, sense: applies-to}
package policy.gauge.start_mark_agrees

import data.policy.gauges
import rego.v2

limits := data.profile.gauge.start_mark_agrees

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "start_mark"]] if some i, s in input.systems

exempt contains outcome if some outcome in gauges.absent

exempt contains [s.id, "a gauge of this kind shows no pressure"] if {
	some s in input.systems
	is_string(s.gauge.kind)
	not s.gauge.kind in limits.kinds.any_of
}

exempt contains [s.id, "the gauge has no mark"] if {
	some s in input.systems
	s.gauge.start_mark_present == false
}

judged contains s.id if {
	some s in input.systems
	s.id in gauges.shown
	s.gauge.kind in limits.kinds.any_of
	s.gauge.start_mark_present == true
	s.id in gauges.read
}

met contains d.id if {
	some d in input.derived.systems
	d.id in judged
	d.start_mark_difference.si <= limits.difference.si
}

deficient contains [d.id, ["derived", "systems", i, "start_mark_difference"], "difference"] if {
	some i, d in input.derived.systems
	d.id in judged
	d.start_mark_difference.si > limits.difference.si
}

missing contains gap if some gap in gauges.unsaid

missing contains gap if some gap in gauges.unread

missing contains [s.id, ["systems", i, "gauge", "start_mark_present"]] if {
	some i, s in input.systems
	not is_boolean(s.gauge.start_mark_present)
}

missing contains [d.id, ["derived", "systems", i, "start_mark_difference"]] if {
	some i, d in input.derived.systems
	not is_number(d.start_mark_difference.si)
}
