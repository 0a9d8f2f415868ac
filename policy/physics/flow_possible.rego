# METADATA
# title: Measured flow and gauge reading can both be true
# description: When they cannot, one of the two was not measured, and nobody knows which protects the house.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Measure the flow again and read the gauge again; check the fan model, its curve and the pipe in the record.
package policy.physics.flow_possible

import data.policy.airways
import data.policy.readings
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "flow_difference"]] if some i, s in input.systems

exempt contains outcome if some outcome in readings.aside

compared contains s.id if {
	some s in input.systems
	s.id in readings.placed
	s.id in airways.proven
}

met contains d.id if {
	some d in input.derived.systems
	d.id in compared
	d.flow_agreement in {"consistent", "look-again"}
}

deficient contains [d.id, ["derived", "systems", i, "flow_difference"]] if {
	some i, d in input.derived.systems
	d.id in compared
	d.flow_agreement == "inconsistent"
}

undetermined contains [s.id, ["systems", i, "commissioning", "measured_flow"], "flow, reading, fan curve and pipe are not all recorded, so there is nothing to compare"] if {
	some i, s in input.systems
	s.id in readings.known
	not s.id in compared
}

undetermined contains [d.id, ["derived", "systems", i, "flow_difference"], "no flow follows from the reading, the fan curve and the pipe as recorded"] if {
	some i, d in input.derived.systems
	d.id in compared
	not is_string(d.flow_agreement)
}

missing contains gap if some gap in readings.unsaid
