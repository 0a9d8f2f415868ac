# METADATA
# description: |
#   The labels and tags of systems with a fan. A label whose kind nobody wrote
#   down counts wherever it could matter, and a system whose labels nobody
#   listed may have any.
package policy.marks

import data.policy.systems
import rego.v2

# Systems of which all labels are listed with their kinds.
known contains s.id if {
	some s in input.systems
	is_array(s.labels)
	count({l.id | some l in s.labels; not is_string(l.kind)}) == 0
}

# What stands for a label that may be there: a system without a list.
unlisted contains ["systems", ["systems"]] if not is_array(input.systems)

unlisted contains [s.id, ["systems", i, "labels"]] if {
	some i, s in input.systems
	not is_array(s.labels)
}

# The same, with labels that may be of any kind.
vague contains gap if some gap in unlisted

vague contains [l.id, ["systems", i, "labels", j, "kind"]] if {
	some i, s in input.systems
	some j, l in s.labels
	not is_string(l.kind)
}

# What is not said of the labels of a system, under the id of the system.
untold contains gap if some gap in unlisted

untold contains [s.id, ["systems", i, "labels", j, "kind"]] if {
	some i, s in input.systems
	some j, l in s.labels
	not is_string(l.kind)
}

# Labels of systems with a fan.
with_fan contains l.id if {
	some s in input.systems
	s.id in systems.with_fan
	some l in s.labels
}

# Labels, and systems without a list, that no fan concerns.
without_fan contains [l.id, reason] if {
	some s in input.systems
	some [id, reason] in systems.without_fan
	id == s.id
	some l in s.labels
}

without_fan contains outcome if {
	some outcome in systems.without_fan
	some [id, _] in unlisted
	id == outcome[0]
}

# What the record leaves out that decides whether a label is meant.
unsaid contains [l.id, path] if {
	some s in input.systems
	some [id, path] in systems.unsaid
	id == s.id
	some l in s.labels
}

unsaid contains gap if {
	some gap in systems.unsaid
	some [id, _] in unlisted
	id == gap[0]
}

# Labels fixed to pipe: a system label there names the pipe as well.
on_pipe contains l.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "pipe"
}

on_pipe contains l.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "system"
	l.place == "pipe"
}

# The levels on which the pipe of a system is labelled.
levels contains [s.id, lower(l.level)] if {
	some s in input.systems
	some l in s.labels
	l.id in on_pipe
}

# Systems with a label that may be on pipe of any level.
anywhere contains s.id if {
	some s in input.systems
	some l in s.labels
	l.id in on_pipe
	not is_string(l.level)
}

anywhere contains s.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "system"
	not is_string(l.place)
}
