# METADATA
# title: Suction is left in the pit at the flow and reading recorded
# description: When the pipe alone takes more than the gauge shows, reading and flow cannot both be true, and the ground may get nothing.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Read the gauge and measure the flow again; check sizes and lengths of the pipe in the record.
#   limits:
#     above: {dimension: pressure, sense: more-than}
package policy.physics.suction_left

import data.policy.airways
import data.policy.readings
import rego.v2

limits := data.profile.physics.suction_left

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "suction_available"]] if some i, s in input.systems

exempt contains outcome if some outcome in readings.aside

compared contains s.id if {
	some s in input.systems
	s.id in readings.placed
	s.id in airways.proven
}

met contains d.id if {
	some d in input.derived.systems
	d.id in compared
	d.suction_available.si > limits.above.si
}

deficient contains [d.id, ["derived", "systems", i, "suction_available"], "above"] if {
	some i, d in input.derived.systems
	d.id in compared
	d.suction_available.si <= limits.above.si
}

undetermined contains [s.id, ["systems", i, "gauge", "readings"], "reading, flow, altitude and pipe are not all recorded, so there is nothing to compare"] if {
	some i, s in input.systems
	s.id in readings.known
	not s.id in compared
}

undetermined contains [d.id, ["derived", "systems", i, "suction_available"], "the losses between pit and gauge cannot be worked out from the pipe as recorded"] if {
	some i, d in input.derived.systems
	d.id in compared
	not is_number(d.suction_available.si)
}

missing contains gap if some gap in readings.unsaid
