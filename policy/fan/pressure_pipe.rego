# METADATA
# title: No pipe after the fan runs in, through or under heated or cooled rooms
# description: After the fan the pipe is under pressure, so a cracked joint pushes undiluted soil gas into the room.
# custom:
#   subject: fan
#   grade: hazard
#   stage: roughed-in
#   remedy: Move the fan downstream, so that everything inside the house is under suction.
#   caution: Wiring and work on a running fan are for licensed people; cut the power and prove it dead first.
package policy.fan.pressure_pipe

import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "pressure_pipe_in_conditioned_space"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.fan.pressure_pipe_in_conditioned_space == false
}

deficient contains [s.id, ["systems", i, "fan", "pressure_pipe_in_conditioned_space"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.fan.pressure_pipe_in_conditioned_space == true
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "fan", "pressure_pipe_in_conditioned_space"]] if {
	some i, s in input.systems
	not is_boolean(s.fan.pressure_pipe_in_conditioned_space)
}
