# METADATA
# title: The system label can be read from where one stands
# description: A label that needs a torch and glasses tells nobody whom to call.
# custom:
#   subject: label
#   grade: required
#   stage: closeout
#   remedy: Replace the label by one in larger, clearer letters.
#   limits:
#     minimum: {dimension: length, sense: at-least}
package policy.labels.legible

import data.policy.marks
import rego.v2

limits := data.profile.labels.legible

subjects contains gap if some gap in marks.vague

subjects contains [l.id, ["systems", i, "labels", j, "legible_from"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "system"
}

exempt contains [id, reason] if {
	some [id, reason] in marks.without_fan
	some [subject, _] in subjects
	subject == id
}

judged contains l.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "system"
	l.id in marks.with_fan
}

met contains l.id if {
	some s in input.systems
	some l in s.labels
	l.id in judged
	l.legible_from.si >= limits.minimum.si
}

deficient contains [l.id, ["systems", i, "labels", j, "legible_from"], "minimum"] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.legible_from.si < limits.minimum.si
}

missing contains gap if some gap in marks.vague

missing contains [id, path] if {
	some [id, path] in marks.unsaid
	some [subject, _] in subjects
	subject == id
}

missing contains [l.id, ["systems", i, "labels", j, "legible_from"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "system"
	not is_number(l.legible_from.si)
}
