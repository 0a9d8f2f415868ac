# METADATA
# title: Fan, pipe and ground meet at a point that the fan's curve has
# description: A fan chosen outside its curve either stalls or runs free, and the suction that was promised never comes.
# custom:
#   subject: system
#   grade: recommended
#   stage: planned
#   remedy: Choose a fan whose curve crosses what the pipe and the ground ask for.
package policy.physics.operating_point

import data.policy.airways
import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "operating_state"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains d.id if {
	some d in input.derived.systems
	d.id in systems.with_fan
	d.id in airways.told
	d.operating_state == "crosses"
}

deficient contains [d.id, ["derived", "systems", i, "operating_state"]] if {
	some i, d in input.derived.systems
	d.id in systems.with_fan
	d.id in airways.told
	is_string(d.operating_state)
	d.operating_state != "crosses"
}

missing contains gap if some gap in systems.unsaid

missing contains gap if some gap in airways.untold

missing contains [d.id, ["derived", "systems", i, "operating_flow"]] if {
	some i, d in input.derived.systems
	not is_number(d.operating_flow.si)
}
