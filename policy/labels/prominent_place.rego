# METADATA
# title: The system label hangs where people look for it
# description: A label in a corner behind the furnace is found by nobody who needs it.
# custom:
#   subject: label
#   grade: required
#   stage: closeout
#   remedy: Move the label to the pipe beside the gauge, to the service panel, or into plain view.
#   limits:
#     places: {dimension: choice, sense: one-of}
#     panel: {dimension: length, sense: at-most}
package policy.labels.prominent_place

import data.policy.marks
import rego.v2

limits := data.profile.labels.prominent_place

subjects contains gap if some gap in marks.vague

subjects contains [l.id, ["systems", i, "labels", j, "place"]] if {
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
	l.place in limits.places.any_of
}

met contains l.id if {
	some s in input.systems
	some l in s.labels
	l.id in judged
	l.panel_distance.si <= limits.panel.si
}

met contains l.id if {
	some s in input.systems
	some l in s.labels
	l.id in judged
	l.prominent == true
}

deficient contains [l.id, ["systems", i, "labels", j, "place"], "places"] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	is_string(l.place)
	not l.place in limits.places.any_of
	l.prominent == false
	l.panel_distance.si > limits.panel.si
}

missing contains gap if some gap in marks.vague

missing contains [id, path] if {
	some [id, path] in marks.unsaid
	some [subject, _] in subjects
	subject == id
}

missing contains [l.id, ["systems", i, "labels", j, "place"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "system"
	not is_string(l.place)
}

missing contains [l.id, ["systems", i, "labels", j, "prominent"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "system"
	not is_boolean(l.prominent)
}

missing contains [l.id, ["systems", i, "labels", j, "panel_distance"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "system"
	not is_number(l.panel_distance.si)
}
