# METADATA
# title: The system label names the installer, with phone and certification
# description: When the gauge falls to zero, people call the number on the label or nobody.
# custom:
#   subject: label
#   grade: required
#   stage: closeout
#   remedy: Write name, phone and certification number of the installer on the label.
#   limits:
#     not_for: {dimension: choice, sense: none-of}
package policy.labels.installer

import data.policy.marks
import data.policy.occupants
import rego.v2

limits := data.profile.labels.installer

subjects contains gap if some gap in marks.vague

subjects contains [l.id, ["systems", i, "labels", j, "installer"]] if {
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
	l.installer == true
	l.phone == true
	l.credential == true
}

deficient contains [l.id, ["systems", i, "labels", j, "installer"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.installer == false
}

deficient contains [l.id, ["systems", i, "labels", j, "phone"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.phone == false
}

deficient contains [l.id, ["systems", i, "labels", j, "credential"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.credential == false
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

missing contains [l.id, ["systems", i, "labels", j, "installer"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "system"
	not is_boolean(l.installer)
}

missing contains [l.id, ["systems", i, "labels", j, "phone"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "system"
	not is_boolean(l.phone)
}

missing contains [l.id, ["systems", i, "labels", j, "credential"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "system"
	not is_boolean(l.credential)
}
