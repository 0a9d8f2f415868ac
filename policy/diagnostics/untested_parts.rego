# METADATA
# title: No part of the slab lies farther from a test hole than suction was seen to reach
# description: A corner that nobody tested can stand on fill of its own.
# custom:
#   subject: communication test
#   grade: recommended
#   stage: planned
#   remedy: Drill a test hole in the part that was left out.
package policy.diagnostics.untested_parts

import rego.v2

subjects contains ["diagnostics", ["diagnostics", "communication_tests"]] if not is_array(input.diagnostics.communication_tests)

subjects contains [t.id, ["derived", "communication", i, "farthest_untested"]] if some i, t in input.diagnostics.communication_tests

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
	c.farthest_untested.si <= c.reach.si
}

deficient contains [c.id, ["derived", "communication", i, "farthest_untested"]] if {
	some i, c in input.derived.communication
	c.farthest_untested.si > c.reach.si
}

missing contains [t.id, ["diagnostics", "communication_tests", i, "holes", j, "pressure"]] if {
	some i, t in input.diagnostics.communication_tests
	some j, h in t.holes
	not is_number(h.pressure.si)
}

missing contains [c.id, ["derived", "communication", i, "farthest_untested"]] if {
	some i, c in input.derived.communication
	not is_number(c.farthest_untested.si)
}

missing contains [c.id, ["derived", "communication", i, "reach"]] if {
	some i, c in input.derived.communication
	not is_number(c.reach.si)
}
