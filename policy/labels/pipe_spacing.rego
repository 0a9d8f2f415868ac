# METADATA
# title: Labels on pipe of a new house are close enough to each other
# description: Trades that come later see only a piece of the pipe; each piece has to speak for itself.
# custom:
#   subject: system
#   grade: required
#   stage: roughed-in
#   remedy: Add labels until none is farther from the next than the spacing.
#   limits:
#     maximum: {dimension: length, sense: at-most}
#     not_for: {dimension: choice, sense: none-of}
package policy.labels.pipe_spacing

import data.policy.houses
import data.policy.marks
import data.policy.systems
import rego.v2

limits := data.profile.labels.pipe_spacing

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "labels"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(limits.not_for.any_of)
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	houses.meant(limits.not_for.any_of)
}

pipe_labels contains [s.id, l.id] if {
	some s in input.systems
	some l in s.labels
	l.kind == "pipe"
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.id in marks.known
	some [id, _] in pipe_labels
	id == s.id
	count([l.id | some l in s.labels; l.kind == "pipe"]) == count([l.id | some l in s.labels; l.kind == "pipe"; l.spacing.si <= limits.maximum.si])
}

deficient contains [s.id, ["systems", i, "labels"]] if {
	some i, s in input.systems
	s.id in judged
	s.id in marks.known
	count([l.id | some l in s.labels; l.kind == "pipe"]) == 0
}

deficient contains [s.id, ["systems", i, "labels", j, "spacing"], "maximum"] if {
	some i, s in input.systems
	s.id in judged
	some j, l in s.labels
	l.kind == "pipe"
	l.spacing.si > limits.maximum.si
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains gap if some gap in marks.untold

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(limits.not_for.any_of)
}

missing contains [s.id, ["systems", i, "labels", j, "spacing"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "pipe"
	not is_number(l.spacing.si)
}
