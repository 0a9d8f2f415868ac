# METADATA
# title: The state tag is seen without moving anything
# description: A tag behind stored boxes is no proof for the next buyer or inspector.
# custom:
#   subject: label
#   grade: required
#   stage: closeout
#   remedy: Clear the view, or move the tag to where it is in plain view.
package policy.labels.tag_visible

import data.policy.marks
import rego.v2

subjects contains gap if some gap in marks.vague

subjects contains [l.id, ["systems", i, "labels", j, "prominent"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "state-tag"
}

exempt contains [id, reason] if {
	some [id, reason] in marks.without_fan
	some [subject, _] in subjects
	subject == id
}

judged contains l.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "state-tag"
	l.id in marks.with_fan
}

met contains l.id if {
	some s in input.systems
	some l in s.labels
	l.id in judged
	l.prominent == true
}

deficient contains [l.id, ["systems", i, "labels", j, "prominent"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.prominent == false
}

missing contains gap if some gap in marks.vague

missing contains [id, path] if {
	some [id, path] in marks.unsaid
	some [subject, _] in subjects
	subject == id
}

missing contains [l.id, ["systems", i, "labels", j, "prominent"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "state-tag"
	not is_boolean(l.prominent)
}
