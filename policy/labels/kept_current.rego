# METADATA
# title: The client was told in writing to keep the responsible party on the label current
# description: Managers change; a label with the name of the last one is as good as none.
# custom:
#   subject: label
#   grade: required
#   stage: closeout
#   remedy: Tell the client in writing, and keep a copy.
#   limits:
#     not_for: {dimension: choice, sense: none-of}
package policy.labels.kept_current

import data.policy.marks
import data.policy.occupants
import rego.v2

limits := data.profile.labels.kept_current

subjects contains gap if some gap in marks.vague

subjects contains [l.id, ["systems", i, "labels", j, "upkeep_told"]] if {
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
	l.upkeep_told == true
}

deficient contains [l.id, ["systems", i, "labels", j, "upkeep_told"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.upkeep_told == false
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

missing contains [l.id, ["systems", i, "labels", j, "upkeep_told"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "system"
	not is_boolean(l.upkeep_told)
}
