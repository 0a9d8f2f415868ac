# METADATA
# title: The pipe carries a label
# description: An unmarked vent pipe is taken for a drain and cut open.
# custom:
#   subject: system
#   grade: required
#   stage: closeout
#   remedy: Label the pipe where it can be seen.
package policy.labels.pipe_labelled

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
	l.kind == "pipe"
}

deficient contains [s.id, ["systems", i, "labels"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.id in marks.known
	count({l.id | some l in s.labels; l.kind == "pipe"}) == 0
}

missing contains gap if some gap in systems.unsaid

missing contains gap if some gap in marks.untold
