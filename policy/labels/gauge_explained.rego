# METADATA
# title: The system label describes the gauge and says what to do when it shows failure
# description: A gauge that nobody understands warns nobody.
# custom:
#   subject: label
#   grade: required
#   stage: closeout
#   remedy: Add to the label what the gauge should show and whom to call when it does not.
package policy.labels.gauge_explained

import data.policy.marks
import rego.v2

subjects contains gap if some gap in marks.vague

subjects contains [l.id, ["systems", i, "labels", j, "gauge_explained"]] if {
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
	l.gauge_explained == true
}

deficient contains [l.id, ["systems", i, "labels", j, "gauge_explained"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.gauge_explained == false
}

missing contains gap if some gap in marks.vague

missing contains [id, path] if {
	some [id, path] in marks.unsaid
	some [subject, _] in subjects
	subject == id
}

missing contains [l.id, ["systems", i, "labels", j, "gauge_explained"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "system"
	not is_boolean(l.gauge_explained)
}
