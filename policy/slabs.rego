# METADATA
# description: |
#   What lies under the areas that a system treats, and how far suction was shown
#   to reach there.
package policy.slabs

import rego.v2

fills contains [s.id, f.fill] if {
	some s in input.systems
	some area in s.foundations
	some f in input.house.foundations
	f.id == area
}

# Systems of which it is known what lies under every area they treat.
told contains s.id if {
	some s in input.systems
	count(s.foundations) > 0
	count({area |
		some area in s.foundations
		some f in input.house.foundations
		f.id == area
		is_string(f.fill)
	}) == count({area | some area in s.foundations})
}

untold contains [s.id, ["systems", i, "foundations"]] if {
	some i, s in input.systems
	not is_array(s.foundations)
}

untold contains [s.id, ["house", "foundations", k, "fill"]] if {
	some s in input.systems
	some area in s.foundations
	some k, f in input.house.foundations
	f.id == area
	not is_string(f.fill)
}

# [area, share of it that suction was shown to reach]. A test with a hole that was
# not metered shows nothing here.
reached contains [t.foundation, c.coverage.si] if {
	some t in input.diagnostics.communication_tests
	t.id in metered
	some c in input.derived.communication
	c.id == t.id
}

# The same with the system whose own fan drew.
reached_by contains [t.system, t.foundation, c.coverage.si] if {
	some t in input.diagnostics.communication_tests
	t.id in metered
	some c in input.derived.communication
	c.id == t.id
}

metered contains t.id if {
	some t in input.diagnostics.communication_tests
	is_array(t.holes)
	count({h.id | some h in t.holes; not is_number(h.pressure.si)}) == 0
}
