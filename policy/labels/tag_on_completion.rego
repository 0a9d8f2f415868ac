# METADATA
# title: The state tag was fixed on the day the work was finished
# description: A tag fixed before the end vouches for work nobody has seen; one fixed later may never come.
# custom:
#   subject: label
#   grade: required
#   stage: closeout
#   remedy: Write down why the day differs and report it to the state; fix the next tag on the day of completion.
package policy.labels.tag_on_completion

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
	l.fixed_on.si == input.job.dates.completed.si
}

deficient contains [l.id, ["systems", i, "labels", j, "fixed_on"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "state-tag"
	l.id in marks.with_fan
	l.fixed_on.si != input.job.dates.completed.si
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

missing contains [l.id, ["job", "dates", "completed"]] if {
	some s in input.systems
	some l in s.labels
	l.kind == "state-tag"
	not is_number(input.job.dates.completed.si)
}
