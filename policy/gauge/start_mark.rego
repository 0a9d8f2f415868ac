# METADATA
# title: The gauge carries its start-up mark
# description: Without the mark nobody can tell a weak reading from a good one.
# custom:
#   subject: gauge
#   grade: required
#   stage: running
#   remedy: Read the gauge with the fan on and mark that reading on it for good.
#   limits:
#     kinds: {dimension: choice, sense: applies-to}
#     excused_by: {dimension: choice, sense: one-of}
package policy.gauge.start_mark

import data.policy.gauges
import rego.v2

limits := data.profile.gauge.start_mark

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "start_mark_present"]] if some i, s in input.systems

exempt contains outcome if some outcome in gauges.absent

exempt contains [s.id, "its source asks no mark of this kind of gauge"] if {
	some s in input.systems
	is_string(s.gauge.kind)
	not s.gauge.kind in limits.kinds.any_of
}

exempt contains [s.id, "somebody is told from afar when the fan fails"] if {
	some s in input.systems
	"remote-notice" in limits.excused_by.any_of
	s.gauge.start_mark_present == false
	s.alarm.remote_notifies == true
}

judged contains s.id if {
	some s in input.systems
	s.id in gauges.shown
	s.gauge.kind in limits.kinds.any_of
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.gauge.start_mark_present == true
}

deficient contains [s.id, ["systems", i, "gauge", "start_mark_present"]] if {
	some i, s in input.systems
	s.id in judged
	s.gauge.start_mark_present == false
	not "remote-notice" in limits.excused_by.any_of
}

deficient contains [s.id, ["systems", i, "gauge", "start_mark_present"]] if {
	some i, s in input.systems
	s.id in judged
	s.gauge.start_mark_present == false
	s.alarm.remote_notifies == false
}

missing contains gap if some gap in gauges.unsaid

missing contains [s.id, ["systems", i, "gauge", "start_mark_present"]] if {
	some i, s in input.systems
	not is_boolean(s.gauge.start_mark_present)
}

missing contains [s.id, ["systems", i, "alarm", "remote_notifies"]] if {
	some i, s in input.systems
	"remote-notice" in limits.excused_by.any_of
	s.gauge.start_mark_present == false
	not is_boolean(s.alarm.remote_notifies)
}
