# METADATA
# title: Something shows or sounds when the system no longer pulls
# description: A fan that has stopped is silent, and so is the radon that comes back.
# custom:
#   subject: gauge
#   grade: required
#   stage: running
#   remedy: Fit a gauge for pressure or flow, or an alarm that is seen or heard in the house.
#   caution: Wiring is for licensed people.
#   limits:
#     gauges: {dimension: choice, sense: one-of}
#     alarms: {dimension: choice, sense: one-of}
package policy.gauge.warning_device

import data.policy.systems
import rego.v2

limits := data.profile.gauge.warning_device

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "kind"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.gauge.kind in limits.gauges.any_of
}

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.alarm.kind in limits.alarms.any_of
}

deficient contains [s.id, ["systems", i, "gauge", "kind"], "gauges"] if {
	some i, s in input.systems
	s.id in systems.with_fan
	is_string(s.gauge.kind)
	is_string(s.alarm.kind)
	not s.gauge.kind in limits.gauges.any_of
	not s.alarm.kind in limits.alarms.any_of
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "gauge", "kind"]] if {
	some i, s in input.systems
	not is_string(s.gauge.kind)
}

missing contains [s.id, ["systems", i, "alarm", "kind"]] if {
	some i, s in input.systems
	not is_string(s.alarm.kind)
}
