# METADATA
# title: Where somebody else looks after the system, its label says who and how to reach them
# description: A tenant who sees a dead gauge needs the number of whoever has to come.
# custom:
#   subject: label
#   grade: required
#   stage: closeout
#   remedy: Add name and phone of the responsible party to the label.
#   limits:
#     not_for: {dimension: choice, sense: none-of}
package policy.labels.responsible_party

import data.policy.marks
import data.policy.occupants
import rego.v2

limits := data.profile.labels.responsible_party

subjects contains gap if some gap in marks.vague

subjects contains [l.id, ["systems", i, "labels", j, "responsible_party"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "system"
}

exempt contains [id, reason] if {
	some [id, reason] in marks.without_fan
	some [subject, _] in subjects
	subject == id
}

exempt contains [id, "the people who live there look after the system themselves"] if {
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
	l.responsible_party == true
	l.phone == true
}

deficient contains [l.id, ["systems", i, "labels", j, "responsible_party"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.responsible_party == false
}

deficient contains [l.id, ["systems", i, "labels", j, "phone"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.phone == false
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

missing contains [l.id, ["systems", i, "labels", j, "responsible_party"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "system"
	not is_boolean(l.responsible_party)
}

missing contains [l.id, ["systems", i, "labels", j, "phone"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "system"
	not is_boolean(l.phone)
}
