# METADATA
# title: The fan runs day and night
# description: Radon is back within hours once the fan stops.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Take timers and switches out of the way and tell the people who live there to leave the fan on.
package policy.fan.runs_continuously

import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "runs_continuously"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.runs_continuously == true
}

deficient contains [s.id, ["systems", i, "runs_continuously"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.runs_continuously == false
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "runs_continuously"]] if {
	some i, s in input.systems
	not is_boolean(s.runs_continuously)
}
