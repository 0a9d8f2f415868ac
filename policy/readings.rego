# METADATA
# description: |
#   Which gauges show suction and have readings whose order is known, so that
#   rules that compare a reading with something else need not ask again.
package policy.readings

import data.policy.gauges
import rego.v2

suction_kinds := {"u-tube", "dial", "digital"}

aside contains outcome if some outcome in gauges.absent

aside contains [s.id, "a gauge of this kind shows no pressure"] if {
	some s in input.systems
	s.gauge.kind in {"flow", "current"}
}

# Of several readings it must be known when each was taken.
ordered contains s.id if {
	some s in input.systems
	count(s.gauge.readings) == 1
}

ordered contains s.id if {
	some s in input.systems
	count({r.id | some r in s.gauge.readings; not is_number(r.at.si)}) == 0
}

judged contains s.id if {
	some s in input.systems
	s.id in gauges.shown
	s.gauge.kind in suction_kinds
	s.id in gauges.read
	s.id in ordered
}

# Those of which the last reading with the fan on is known.
known contains d.id if {
	some d in input.derived.systems
	d.id in judged
	is_number(d.gauge_reading.si)
}

# Those whose reading lies on a scale whose end is recorded, at a known place of
# the pipe: only from them does anything follow for flow and pit.
placed contains s.id if {
	some s in input.systems
	s.id in known
	s.id in tapped
	is_number(s.gauge.range.si)
}

tapped contains s.id if {
	some s in input.systems
	is_string(s.gauge.after_segment)
}

tapped contains s.id if {
	some s in input.systems
	s.gauge.tap in {"fan-inlet", "pit"}
}

unsaid contains gap if some gap in gauges.unsaid

unsaid contains gap if some gap in gauges.unread

unsaid contains [s.id, ["systems", i, "gauge", "readings", j, "at"]] if {
	some i, s in input.systems
	count(s.gauge.readings) > 1
	some j, r in s.gauge.readings
	not is_number(r.at.si)
}

unsaid contains [d.id, ["derived", "systems", i, "gauge_reading"]] if {
	some i, d in input.derived.systems
	not is_number(d.gauge_reading.si)
}

unplaced contains gap if some gap in unsaid

unplaced contains [s.id, ["systems", i, "gauge", "range"]] if {
	some i, s in input.systems
	not is_number(s.gauge.range.si)
}

unplaced contains [s.id, ["systems", i, "gauge", "after_segment"]] if {
	some i, s in input.systems
	not s.id in tapped
}
