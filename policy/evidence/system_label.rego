# METADATA
# title: A photo shows the system label
# description: The label is what the family reads when the alarm sounds; the photo shows that it is there and can be read.
# custom:
#   subject: system label
#   grade: recommended
#   stage: closeout
#   remedy: Take a photo of the filled-in label, and name it in the record.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
package policy.evidence.system_label

import data.policy.marks
import rego.v2

kinds := data.profile.evidence.system_label.kinds.any_of

subjects contains gap if some gap in marks.vague

subjects contains [l.id, ["systems", i, "labels", j, "photo"]] if {
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

named contains [l.id, e.id] if {
	some s in input.systems
	some l in s.labels
	some e in input.evidence
	e.id == l.photo
}

named contains [id, e.id] if {
	some e in input.evidence
	some id in e.shows
}

met contains id if {
	some [id, file] in named
	id in judged
	some e in input.evidence
	e.id == file
	e.media_type in kinds
}

deficient contains [id, ["evidence", k, "media_type"], "kinds"] if {
	some [id, file] in named
	id in judged
	not id in met
	some k, e in input.evidence
	e.id == file
	is_string(e.media_type)
	not e.media_type in kinds
}

deficient contains [l.id, ["systems", i, "labels", j, "photo"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	is_string(l.photo)
	is_array(input.evidence)
	not l.id in met
	not l.photo in {e.id | some e in input.evidence}
}

missing contains gap if some gap in marks.vague

missing contains [id, path] if {
	some [id, path] in marks.unsaid
	some [subject, _] in subjects
	subject == id
}

missing contains [l.id, ["systems", i, "labels", j, "photo"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	not is_string(l.photo)
}

missing contains [id, ["evidence"]] if {
	some id in judged
	not is_array(input.evidence)
}

missing contains [id, ["evidence", k, "media_type"]] if {
	some [id, file] in named
	id in judged
	some k, e in input.evidence
	e.id == file
	not is_string(e.media_type)
}
