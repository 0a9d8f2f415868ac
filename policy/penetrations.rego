# METADATA
# description: |
#   The places where the pipe of a system that draws soil gas passes walls,
#   floors and ceilings.
package policy.penetrations

import data.policy.pipes
import data.policy.systems
import rego.v2

gaps contains gap if some gap in pipes.gaps

gaps contains [p.id, ["systems", i, "pipe", j, "penetrations"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_array(p.penetrations)
}

outside contains [id, reason] if {
	some [id, _] in gaps
	some [other, reason] in no_soil_gas
	other == id
}

outside contains [n.id, reason] if {
	some s in input.systems
	some [id, reason] in systems.without_outlet
	id == s.id
	some p in s.pipe
	some n in p.penetrations
}

no_soil_gas contains outcome if some outcome in systems.without_outlet

no_soil_gas contains [p.id, reason] if {
	some s in input.systems
	some [id, reason] in systems.without_outlet
	id == s.id
	some p in s.pipe
}

judged contains n.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	some p in s.pipe
	some n in p.penetrations
}

unsaid contains [n.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
	some p in s.pipe
	some n in p.penetrations
}
