# METADATA
# title: The state tag hangs indoors
# description: Sun and rain make an outdoor tag blank within a few years.
# custom:
#   subject: label
#   grade: required
#   stage: closeout
#   remedy: Move the tag indoors; ask the state for a new one if it does not come off whole.
package policy.labels.tag_indoors

import data.policy.marks
import rego.v2

subjects contains gap if some gap in marks.vague

subjects contains [l.id, ["systems", i, "labels", j, "indoors"]] if {
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
	l.indoors == true
}

deficient contains [l.id, ["systems", i, "labels", j, "indoors"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.indoors == false
}

missing contains gap if some gap in marks.vague

missing contains [id, path] if {
	some [id, path] in marks.unsaid
	some [subject, _] in subjects
	subject == id
}

missing contains [l.id, ["systems", i, "labels", j, "indoors"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "state-tag"
	not is_boolean(l.indoors)
}
