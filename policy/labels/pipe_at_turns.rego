# METADATA
# title: Pipe labels repeat where the pipe changes direction
# description: Behind a bend a pipe looks like any other pipe.
# custom:
#   subject: label
#   grade: required
#   stage: roughed-in
#   remedy: Add a label after each change of direction.
#   limits:
#     not_for: {dimension: choice, sense: none-of}
package policy.labels.pipe_at_turns

import data.policy.houses
import data.policy.marks
import rego.v2

limits := data.profile.labels.pipe_at_turns

subjects contains gap if some gap in marks.vague

subjects contains [l.id, ["systems", i, "labels", j, "at_each_turn"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "pipe"
}

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(limits.not_for.any_of)
}

judged contains l.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "pipe"
	houses.meant(limits.not_for.any_of)
}

met contains l.id if {
	some s in input.systems
	some l in s.labels
	l.id in judged
	l.at_each_turn == true
}

deficient contains [l.id, ["systems", i, "labels", j, "at_each_turn"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.at_each_turn == false
}

missing contains gap if some gap in marks.vague

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(limits.not_for.any_of)
}

missing contains [l.id, ["systems", i, "labels", j, "at_each_turn"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "pipe"
	not is_boolean(l.at_each_turn)
}
