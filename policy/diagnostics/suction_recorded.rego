# METADATA
# title: Suction or flow in the pipe was measured after the start
# description: The first reading is what every later one is compared with; without it nobody sees the system fade.
# custom:
#   subject: system
#   grade: required
#   stage: closeout
#   remedy: Measure suction or flow in the pipe now and write it down.
package policy.diagnostics.suction_recorded

import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "commissioning", "suction_or_flow_recorded"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.commissioning.suction_or_flow_recorded == true
}

deficient contains [s.id, ["systems", i, "commissioning", "suction_or_flow_recorded"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.commissioning.suction_or_flow_recorded == false
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "commissioning", "suction_or_flow_recorded"]] if {
	some i, s in input.systems
	not is_boolean(s.commissioning.suction_or_flow_recorded)
}
