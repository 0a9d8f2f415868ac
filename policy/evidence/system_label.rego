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

import rego.v2

kinds := data.profile.evidence.system_label.kinds.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "labels"]] if {
	some i, s in input.systems
	not is_array(s.labels)
}

subjects contains [l.id, ["systems", i, "labels", j, "photo"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "system"
}

subjects contains [l.id, ["systems", i, "labels", j, "kind"]] if {
	some i, s in input.systems
	some j, l in s.labels
	not is_string(l.kind)
}

judged contains l.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "system"
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
