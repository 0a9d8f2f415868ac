# METADATA
# title: Every test hole is under suction
# description: Where the slab is not under suction, soil gas still comes up through the cracks.
# custom:
#   subject: test hole
#   grade: recommended
#   stage: planned
#   remedy: Look for what parts the fill, and add a suction point or a larger pit on that side.
#   limits:
#     below: {dimension: pressure, sense: less-than}
package policy.diagnostics.suction_reaches

import rego.v2

limits := data.profile.diagnostics.suction_reaches
subjects contains ["diagnostics", ["diagnostics", "communication_tests"]] if not is_array(input.diagnostics.communication_tests)

subjects contains [t.id, ["diagnostics", "communication_tests", i, "holes"]] if {
	some i, t in input.diagnostics.communication_tests
	not is_array(t.holes)
}

subjects contains [h.id, ["diagnostics", "communication_tests", i, "holes", j, "pressure"]] if {
	some i, t in input.diagnostics.communication_tests
	some j, h in t.holes
}

met contains h.id if {
	some t in input.diagnostics.communication_tests
	some h in t.holes
	h.pressure.si < limits.below.si
}

deficient contains [h.id, ["diagnostics", "communication_tests", i, "holes", j, "pressure"], "below"] if {
	some i, t in input.diagnostics.communication_tests
	some j, h in t.holes
	h.pressure.si >= limits.below.si
}

deficient contains [h.id, ["diagnostics", "communication_tests", i, "holes", j, "smoke"]] if {
	some i, t in input.diagnostics.communication_tests
	some j, h in t.holes
	not is_number(h.pressure.si)
	h.smoke in {"still", "up"}
}

undetermined contains [h.id, ["diagnostics", "communication_tests", i, "holes", j, "smoke"], "smoke shows the direction, not how much suction is left for winter"] if {
	some i, t in input.diagnostics.communication_tests
	some j, h in t.holes
	not is_number(h.pressure.si)
	h.smoke == "down"
}
