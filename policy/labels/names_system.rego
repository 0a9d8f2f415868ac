# METADATA
# title: Labels on system and pipe say that they belong to a radon system
# description: Whoever cuts into an unnamed pipe lets soil gas into the house.
# custom:
#   subject: label
#   grade: required
#   stage: closeout
#   remedy: Replace the label by one that names the radon system.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
package policy.labels.names_system

import data.policy.marks
import rego.v2

limits := data.profile.labels.names_system

subjects contains gap if some gap in marks.vague

subjects contains [l.id, ["systems", i, "labels", j, "says_system"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind in limits.kinds.any_of
}

exempt contains [id, reason] if {
	some [id, reason] in marks.without_fan
	some [subject, _] in subjects
	subject == id
}

judged contains l.id if {
	some s in input.systems
	some l in s.labels
	l.kind in limits.kinds.any_of
	l.id in marks.with_fan
}

met contains l.id if {
	some s in input.systems
	some l in s.labels
	l.id in judged
	l.says_system == true
}

deficient contains [l.id, ["systems", i, "labels", j, "says_system"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.says_system == false
}

missing contains gap if some gap in marks.vague

missing contains [id, path] if {
	some [id, path] in marks.unsaid
	some [subject, _] in subjects
	subject == id
}

missing contains [l.id, ["systems", i, "labels", j, "says_system"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind in limits.kinds.any_of
	not is_boolean(l.says_system)
}
