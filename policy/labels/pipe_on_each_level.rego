# METADATA
# title: Pipe in view carries a label on each level
# description: Plumbers come to the kitchen, not to the basement where the only label hangs.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: closeout
#   remedy: Put a label that names the radon system on the pipe on this level.
#   limits:
#     places: {dimension: choice, sense: one-of}
#     not_for: {dimension: choice, sense: one-of}
package policy.labels.pipe_on_each_level

import data.policy.marks
import data.policy.pipes
import data.policy.systems
import rego.v2

limits := data.profile.labels.pipe_on_each_level

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "level"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

outside contains outcome if some outcome in systems.without_outlet

outside contains [s.id, "its source does not speak of systems driven this way"] if {
	some s in input.systems
	s.powered_by in limits.not_for.any_of
}

exempt contains [s.id, reason] if {
	some s in input.systems
	not is_array(s.pipe)
	some [id, reason] in outside
	id == s.id
}

exempt contains [p.id, reason] if {
	some s in input.systems
	some p in s.pipe
	some [id, reason] in outside
	id == s.id
}

exempt contains [p.id, "it is out of view"] if {
	some s in input.systems
	some p in s.pipe
	p.visible == false
}

exempt contains [p.id, "its source asks for no label there"] if {
	some s in input.systems
	some p in s.pipe
	is_string(p.place)
	not p.place in limits.places.any_of
}

judged contains p.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	is_string(s.powered_by)
	not s.powered_by in limits.not_for.any_of
	some p in s.pipe
	p.visible == true
	p.place in limits.places.any_of
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	[s.id, lower(p.level)] in marks.levels
}

deficient contains [p.id, ["systems", i, "pipe", j, "level"]] if {
	some i, s in input.systems
	s.id in marks.known
	not s.id in marks.anywhere
	some j, p in s.pipe
	p.id in judged
	is_string(p.level)
	not [s.id, lower(p.level)] in marks.levels
}

missing contains gap if some gap in pipes.gaps

missing contains [p.id, path] if {
	some s in input.systems
	some p in s.pipe
	some [id, path] in systems.unsaid
	id == s.id
}

missing contains [p.id, path] if {
	some s in input.systems
	some p in s.pipe
	some [id, path] in marks.untold
	id == s.id
}

missing contains [p.id, ["systems", i, "labels", j, "level"]] if {
	some i, s in input.systems
	some p in s.pipe
	some j, l in s.labels
	l.id in marks.on_pipe
	not is_string(l.level)
}

missing contains [p.id, ["systems", i, "labels", j, "place"]] if {
	some i, s in input.systems
	some p in s.pipe
	some j, l in s.labels
	l.kind == "system"
	not is_string(l.place)
}

missing contains [p.id, ["systems", i, "pipe", j, "visible"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_boolean(p.visible)
}

missing contains [p.id, ["systems", i, "pipe", j, "place"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.place)
}

missing contains [p.id, ["systems", i, "pipe", j, "level"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.level)
}
