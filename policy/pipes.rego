# METADATA
# description: |
#   Which pipe segments the pipe rules look at: those of systems that draw soil
#   gas, above slab, soil and membrane. A segment of which nobody wrote down
#   where it runs is neither judged nor left out.
package policy.pipes

import data.policy.systems
import rego.v2

# Systems whose pipe nobody listed: subjects in its place.
gaps contains ["systems", ["systems"]] if not is_array(input.systems)

gaps contains [s.id, ["systems", i, "pipe"]] if {
	some i, s in input.systems
	not is_array(s.pipe)
}

outside contains [s.id, reason] if {
	some s in input.systems
	not is_array(s.pipe)
	some [id, reason] in systems.without_outlet
	id == s.id
}

outside contains [p.id, reason] if {
	some s in input.systems
	some p in s.pipe
	some [id, reason] in systems.without_outlet
	id == s.id
}

outside contains [p.id, "it lies below slab, soil or membrane"] if {
	some s in input.systems
	some p in s.pipe
	p.above_ground == false
}

judged contains p.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	some p in s.pipe
	p.above_ground == true
}

unsaid contains [p.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	some p in s.pipe
	not is_string(s.kind)
}

unsaid contains [p.id, ["systems", i, "pipe", j, "above_ground"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_boolean(p.above_ground)
}
