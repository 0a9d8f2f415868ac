# METADATA
# title: The access to a space kept under suction or pressure says keep closed
# description: An open hatch stops the system, and whoever goes in may find bad air.
# custom:
#   subject: system
#   grade: required
#   stage: closeout
#   remedy: Label the access with keep closed, the hazards inside, and the gear to wear where they are known.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
package policy.labels.airspace

import data.policy.marks
import data.policy.systems
import rego.v2

kinds := data.profile.labels.airspace.kinds.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "labels"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "its source asks this of other kinds of system"] if {
	some s in input.systems
	is_string(s.kind)
	not s.kind in kinds
}

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.kind in kinds
	some l in s.labels
	l.kind == "airspace-access"
	l.says_keep_closed == true
}

deficient contains [s.id, ["systems", i, "labels"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.kind in kinds
	s.id in marks.known
	count({l.id | some l in s.labels; l.kind == "airspace-access"}) == 0
}

deficient contains [s.id, ["systems", i, "labels", j, "says_keep_closed"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.kind in kinds
	some j, l in s.labels
	l.kind == "airspace-access"
	l.says_keep_closed == false
	count({o.id | some o in s.labels; o.kind == "airspace-access"; o.says_keep_closed == true}) == 0
}

missing contains gap if some gap in systems.unsaid

missing contains gap if some gap in marks.untold

missing contains [s.id, ["systems", i, "labels", j, "says_keep_closed"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "airspace-access"
	not is_boolean(l.says_keep_closed)
}
