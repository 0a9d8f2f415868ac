# METADATA
# description: Which suction points there are, and of which systems nobody listed them.
package policy.points

import data.policy.systems
import rego.v2

gaps contains ["systems", ["systems"]] if not is_array(input.systems)

gaps contains [s.id, ["systems", i, "suction_points"]] if {
	some i, s in input.systems
	not is_array(s.suction_points)
}

outside contains [s.id, reason] if {
	some s in input.systems
	not is_array(s.suction_points)
	some [id, reason] in systems.without_outlet
	id == s.id
}

outside contains [p.id, reason] if {
	some s in input.systems
	some p in s.suction_points
	some [id, reason] in systems.without_outlet
	id == s.id
}

judged contains p.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	some p in s.suction_points
}

unsaid contains [p.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	some p in s.suction_points
	not is_string(s.kind)
}
