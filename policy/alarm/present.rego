# METADATA
# title: Something calls out when the fan fails, besides the gauge
# description: A gauge tells only those who look; an alarm also reaches those who forget to.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Fit an alarm for loss of suction or airflow that is heard, seen or sent to somebody, and try it with the fan off.
#   caution: Wiring is for licensed people.
#   limits:
#     kinds: {dimension: choice, sense: applies-to}
package policy.alarm.present

import data.policy.systems
import rego.v2

kinds := data.profile.alarm.present.kinds.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "alarm", "kind"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.alarm.kind in kinds
	s.alarm.kind != "remote"
}

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.alarm.kind in kinds
	s.alarm.remote_notifies == true
}

deficient contains [s.id, ["systems", i, "alarm", "kind"], "kinds"] if {
	some i, s in input.systems
	s.id in systems.with_fan
	is_string(s.alarm.kind)
	not s.alarm.kind in kinds
}

deficient contains [s.id, ["systems", i, "alarm", "remote_notifies"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.alarm.kind == "remote"
	s.alarm.remote_notifies == false
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "alarm", "kind"]] if {
	some i, s in input.systems
	not is_string(s.alarm.kind)
}

missing contains [s.id, ["systems", i, "alarm", "remote_notifies"]] if {
	some i, s in input.systems
	s.alarm.kind == "remote"
	not is_boolean(s.alarm.remote_notifies)
}
