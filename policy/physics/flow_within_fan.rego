# METADATA
# title: The measured flow is no more than the fan moves in free air
# description: More air than the fan can move was not measured in this pipe.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Measure again with the meter checked; check the model of the fan and its data sheet.
package policy.physics.flow_within_fan

import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "commissioning", "measured_flow"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

# [system, its flow where its curve comes down to no pressure]
free contains [s.id, p.flow.si] if {
	some s in input.systems
	s.id in systems.with_fan
	some p in s.fan.curve
	p.pressure.si == 0
}

# Of two such points the larger flow counts.
within contains s.id if {
	some s in input.systems
	some [id, most] in free
	id == s.id
	s.commissioning.measured_flow.si <= most
}

met contains id if some id in within

deficient contains [s.id, ["systems", i, "commissioning", "measured_flow"]] if {
	some i, s in input.systems
	s.id in {id | some [id, _] in free}
	is_number(s.commissioning.measured_flow.si)
	not s.id in within
}

undetermined contains [s.id, ["systems", i, "commissioning", "measured_flow"], "no flow was measured that could be compared"] if {
	some i, s in input.systems
	s.id in systems.with_fan
	not is_number(s.commissioning.measured_flow.si)
}

undetermined contains [s.id, ["systems", i, "fan", "curve"], "the recorded curve does not come down to no pressure"] if {
	some i, s in input.systems
	s.id in systems.with_fan
	not s.id in {id | some [id, _] in free}
}

missing contains gap if some gap in systems.unsaid
