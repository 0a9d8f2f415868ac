# METADATA
# title: A label hangs near the cap of a roughed-in pipe
# description: A capped stub in a floor looks like a spare drain and gets used as one.
# custom:
#   subject: system
#   grade: required
#   stage: roughed-in
#   remedy: Put a label on the pipe near its cap.
#   limits:
#     not_for: {dimension: choice, sense: none-of}
package policy.labels.pipe_near_cap

import data.policy.houses
import data.policy.marks
import data.policy.systems
import rego.v2

not_for := data.profile.labels.pipe_near_cap.not_for.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "labels"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "the pipe goes on from the slab"] if {
	some s in input.systems
	is_string(s.powered_by)
	s.powered_by != "rough-in"
}

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(not_for)
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	s.powered_by == "rough-in"
	houses.meant(not_for)
}

near contains s.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "pipe"
	l.near_cap == true
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.id in near
}

deficient contains [s.id, ["systems", i, "labels"]] if {
	some i, s in input.systems
	s.id in judged
	s.id in marks.known
	not s.id in near
	count({l.id | some l in s.labels; l.kind == "pipe"; not is_boolean(l.near_cap)}) == 0
}

missing contains gap if some gap in systems.unsaid

missing contains gap if some gap in marks.untold

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(not_for)
}

missing contains [s.id, ["systems", i, "labels", j, "near_cap"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "pipe"
	not is_boolean(l.near_cap)
}
