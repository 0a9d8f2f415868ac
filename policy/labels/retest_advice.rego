# METADATA
# title: The system label advises a new test often enough
# description: Fans age and houses settle; only a test shows that the level is still low.
# custom:
#   subject: label
#   grade: required
#   stage: closeout
#   remedy: Put advice on the label to test again within the interval.
#   limits:
#     interval: {dimension: duration, sense: at-most}
#     not_for: {dimension: choice, sense: none-of}
package policy.labels.retest_advice

import data.policy.marks
import data.policy.occupants
import rego.v2

limits := data.profile.labels.retest_advice

subjects contains gap if some gap in marks.vague

subjects contains [l.id, ["systems", i, "labels", j, "retest_advice"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "system"
}

exempt contains [id, reason] if {
	some [id, reason] in marks.without_fan
	some [subject, _] in subjects
	subject == id
}

exempt contains [id, "its source leaves out this kind of occupancy"] if {
	some [id, _] in subjects
	occupants.left_out(limits.not_for.any_of)
}

judged contains l.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "system"
	l.id in marks.with_fan
	occupants.meant(limits.not_for.any_of)
}

met contains l.id if {
	some s in input.systems
	some l in s.labels
	l.id in judged
	l.retest_advice.si <= limits.interval.si
}

deficient contains [l.id, ["systems", i, "labels", j, "retest_advice"], "interval"] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.retest_advice.si > limits.interval.si
}

missing contains gap if some gap in marks.vague

missing contains [id, path] if {
	some [id, path] in marks.unsaid
	some [subject, _] in subjects
	subject == id
}

missing contains [id, ["house", "occupancy"]] if {
	some [id, _] in subjects
	occupants.untold(limits.not_for.any_of)
}

missing contains [l.id, ["systems", i, "labels", j, "retest_advice"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "system"
	not is_number(l.retest_advice.si)
}
