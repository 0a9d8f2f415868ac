# METADATA
# title: Letters on pipe labels are large enough
# description: A label on a pipe under the ceiling is read from the floor or not at all.
# custom:
#   subject: label
#   grade: recommended
#   stage: closeout
#   remedy: Replace the label by one in larger letters.
#   limits:
#     minimum: {dimension: length, sense: at-least}
package policy.labels.pipe_letters

import data.policy.marks
import rego.v2

limits := data.profile.labels.pipe_letters

subjects contains gap if some gap in marks.vague

subjects contains [l.id, ["systems", i, "labels", j, "letter_height"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "pipe"
}

exempt contains [id, reason] if {
	some [id, reason] in marks.without_fan
	some [subject, _] in subjects
	subject == id
}

judged contains l.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "pipe"
	l.id in marks.with_fan
}

met contains l.id if {
	some s in input.systems
	some l in s.labels
	l.id in judged
	l.letter_height.si >= limits.minimum.si
}

deficient contains [l.id, ["systems", i, "labels", j, "letter_height"], "minimum"] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.letter_height.si < limits.minimum.si
}

missing contains gap if some gap in marks.vague

missing contains [id, path] if {
	some [id, path] in marks.unsaid
	some [subject, _] in subjects
	subject == id
}

missing contains [l.id, ["systems", i, "labels", j, "letter_height"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "pipe"
	not is_number(l.letter_height.si)
}
