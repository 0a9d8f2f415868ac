# METADATA
# title: The system carries a label of its own
# description: The label is what the next owner, plumber or fire officer has to go by.
# custom:
#   subject: system
#   grade: required
#   stage: closeout
#   remedy: Fix the system label in plain view.
package policy.labels.system_label

import data.policy.marks
import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "labels"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	some l in s.labels
	l.kind == "system"
}

deficient contains [s.id, ["systems", i, "labels"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.id in marks.known
	count({l.id | some l in s.labels; l.kind == "system"}) == 0
}

missing contains gap if some gap in systems.unsaid

missing contains gap if some gap in marks.untold
