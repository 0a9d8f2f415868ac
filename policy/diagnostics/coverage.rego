# METADATA
# title: The whole slab lies near test holes that are under suction
# description: One side of the slab without suction is enough to feed the whole house.
# custom:
#   subject: communication test
#   grade: recommended
#   stage: planned
#   remedy: Add a suction point where the holes do not pull, and read them again.
#   limits:
#     share: {dimension: ratio, sense: at-least}
package policy.diagnostics.coverage

import rego.v2

limits := data.profile.diagnostics.coverage
subjects contains ["diagnostics", ["diagnostics", "communication_tests"]] if not is_array(input.diagnostics.communication_tests)

subjects contains [t.id, ["derived", "communication", i, "coverage"]] if some i, t in input.diagnostics.communication_tests

# Tests with every hole read by a meter: smoke shows the direction, not how far the suction holds.
read contains t.id if {
	some t in input.diagnostics.communication_tests
	count(t.holes) == count({h.id |
		some h in t.holes
		is_number(h.pressure.si)
	})
}

met contains c.id if {
	some c in input.derived.communication
	c.id in read
	c.coverage.si >= limits.share.si
	c.holes_pulling == c.holes_total
}

deficient contains [c.id, ["derived", "communication", i, "coverage"], "share"] if {
	some i, c in input.derived.communication
	c.coverage.si < limits.share.si
}

# Where only distances are known, the share is that of a circle, which a hole
# without suction can lie in.
deficient contains [c.id, ["derived", "communication", i, "holes_pulling"]] if {
	some i, c in input.derived.communication
	c.holes_pulling < c.holes_total
}

missing contains [t.id, ["diagnostics", "communication_tests", i, "holes", j, "pressure"]] if {
	some i, t in input.diagnostics.communication_tests
	some j, h in t.holes
	not is_number(h.pressure.si)
}

missing contains [c.id, ["derived", "communication", i, "coverage"]] if {
	some i, c in input.derived.communication
	not is_number(c.coverage.si)
}

missing contains [t.id, ["diagnostics", "communication_tests", i, "holes"]] if {
	some i, t in input.diagnostics.communication_tests
	not is_array(t.holes)
}
