# METADATA
# title: Measured flow and gauge reading agree well
# description: A fan that moves less than its reading promises leaves part of the slab without suction.
# custom:
#   subject: system
#   grade: recommended
#   stage: running
#   remedy: Look again at both readings, at leaks between gauge and fan, and at the curve.
package policy.physics.flow_consistent

import data.policy.airways
import data.policy.readings
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "flow_difference"]] if some i, s in input.systems

exempt contains outcome if some outcome in readings.aside

exempt contains [d.id, "the two cannot both be true, which another requirement judges"] if {
	some d in input.derived.systems
	d.id in compared
	d.flow_agreement == "inconsistent"
}

compared contains s.id if {
	some s in input.systems
	s.id in readings.placed
	s.id in airways.proven
}

met contains d.id if {
	some d in input.derived.systems
	d.id in compared
	d.flow_agreement == "consistent"
}

deficient contains [d.id, ["derived", "systems", i, "flow_difference"]] if {
	some i, d in input.derived.systems
	d.id in compared
	d.flow_agreement == "look-again"
}

undetermined contains [d.id, ["derived", "systems", i, "flow_difference"], "no flow follows from the reading, the fan curve and the pipe as recorded"] if {
	some i, d in input.derived.systems
	d.id in compared
	not is_string(d.flow_agreement)
}

missing contains gap if some gap in readings.unplaced

missing contains gap if some gap in airways.untold

missing contains [s.id, ["systems", i, "commissioning", "measured_flow"]] if {
	some i, s in input.systems
	not s.id in airways.measured
}

missing contains [d.id, ["derived", "systems", i, "flow_difference"]] if {
	some i, d in input.derived.systems
	not is_number(d.flow_difference.si)
}
