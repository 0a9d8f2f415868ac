# METADATA
# title: The checklist was finished before the state tag went on
# description: The tag says that somebody has checked the system, so the check comes first.
# custom:
#   subject: label
#   grade: required
#   stage: closeout
#   remedy: Finish the checklist, and tell the state if the tag went on before it.
package policy.labels.tag_after_checklist

import data.policy.marks
import rego.v2

subjects contains gap if some gap in marks.vague

subjects contains [l.id, ["systems", i, "labels", j, "fixed_on"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "state-tag"
}

exempt contains [id, reason] if {
	some [id, reason] in marks.without_fan
	some [subject, _] in subjects
	subject == id
}

met contains l.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "state-tag"
	l.id in marks.with_fan
	l.fixed_on.si >= s.commissioning.checklist_done_on.si
}

deficient contains [l.id, ["systems", i, "labels", j, "fixed_on"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "state-tag"
	l.id in marks.with_fan
	l.fixed_on.si < s.commissioning.checklist_done_on.si
}

missing contains gap if some gap in marks.vague

missing contains [id, path] if {
	some [id, path] in marks.unsaid
	some [subject, _] in subjects
	subject == id
}

missing contains [l.id, ["systems", i, "labels", j, "fixed_on"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "state-tag"
	not is_number(l.fixed_on.si)
}

missing contains [l.id, ["systems", i, "commissioning", "checklist_done_on"]] if {
	some i, s in input.systems
	some l in s.labels
	l.kind == "state-tag"
	not is_number(s.commissioning.checklist_done_on.si)
}
