# METADATA
# title: The breakers of fan and alarm are named for the radon system
# description: Whoever looks for a dead outlet switches an unnamed breaker off and leaves it off.
# custom:
#   subject: system
#   grade: required
#   stage: closeout
#   remedy: Name the breaker in the panel.
#   caution: Opening a panel is for licensed people; a label on the outside of the door needs no open panel.
package policy.labels.breaker

import data.policy.marks
import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "labels"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "the fan has a plug and the alarm no circuit"] if {
	some s in input.systems
	s.electrical.connection == "plug-in"
	s.id in unwired
}

unwired contains s.id if {
	some s in input.systems
	s.alarm.kind == "none"
}

unwired contains s.id if {
	some s in input.systems
	s.alarm.power == "battery"
}

wired contains s.id if {
	some s in input.systems
	s.electrical.connection == "hard-wired"
}

wired contains s.id if {
	some s in input.systems
	is_string(s.alarm.kind)
	s.alarm.kind != "none"
	s.alarm.power in {"mains", "low-voltage"}
}

named contains s.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "breaker"
	l.says_system == true
}

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.id in wired
	s.id in named
}

deficient contains [s.id, ["systems", i, "labels"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.id in wired
	s.id in marks.known
	count({l.id | some l in s.labels; l.kind == "breaker"; l.says_system != false}) == 0
	count({l.id | some l in s.labels; l.kind == "breaker"; not is_boolean(l.says_system)}) == 0
}

missing contains gap if some gap in systems.unsaid

missing contains gap if some gap in marks.untold

missing contains [s.id, ["systems", i, "electrical", "connection"]] if {
	some i, s in input.systems
	not s.id in wired
	not is_string(s.electrical.connection)
}

missing contains [s.id, ["systems", i, "alarm", "power"]] if {
	some i, s in input.systems
	s.electrical.connection == "plug-in"
	not is_string(s.alarm.power)
}

missing contains [s.id, ["systems", i, "alarm", "kind"]] if {
	some i, s in input.systems
	s.electrical.connection == "plug-in"
	not is_string(s.alarm.kind)
}

missing contains [s.id, ["systems", i, "labels", j, "says_system"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "breaker"
	not is_boolean(l.says_system)
}
