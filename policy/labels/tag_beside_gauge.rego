# METADATA
# title: The state tag is fixed beside the gauge
# description: Whoever looks at the gauge finds the system number there and then.
# custom:
#   subject: label
#   grade: required
#   stage: closeout
#   remedy: Fix the tag next to the gauge; ask the state for a new one if it does not come off whole.
#   limits:
#     places: {dimension: choice, sense: one-of}
package policy.labels.tag_beside_gauge

import data.policy.marks
import rego.v2

limits := data.profile.labels.tag_beside_gauge

subjects contains gap if some gap in marks.vague

subjects contains [l.id, ["systems", i, "labels", j, "beside_gauge"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "state-tag"
}

exempt contains [id, reason] if {
	some [id, reason] in marks.without_fan
	some [subject, _] in subjects
	subject == id
}

judged contains l.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "state-tag"
	l.id in marks.with_fan
}

met contains l.id if {
	some s in input.systems
	some l in s.labels
	l.id in judged
	l.beside_gauge == true
	l.place in limits.places.any_of
}

deficient contains [l.id, ["systems", i, "labels", j, "beside_gauge"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.beside_gauge == false
}

deficient contains [l.id, ["systems", i, "labels", j, "place"], "places"] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	is_string(l.place)
	not l.place in limits.places.any_of
}

missing contains gap if some gap in marks.vague

missing contains [id, path] if {
	some [id, path] in marks.unsaid
	some [subject, _] in subjects
	subject == id
}

missing contains [l.id, ["systems", i, "labels", j, "beside_gauge"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "state-tag"
	not is_boolean(l.beside_gauge)
}

missing contains [l.id, ["systems", i, "labels", j, "place"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "state-tag"
	not is_string(l.place)
}
