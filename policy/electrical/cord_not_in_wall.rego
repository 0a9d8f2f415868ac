# METADATA
# title: The cord passes through no wall and is hidden in none
# description: A cord inside a wall chafes and heats where nobody sees it.
# custom:
#   subject: system
#   grade: hazard
#   stage: running
#   remedy: Take the cord out of the wall and have fixed wiring put in.
#   caution: Wiring is work for licensed people; cut the power and prove it dead first.
package policy.electrical.cord_not_in_wall

import data.policy.wiring
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "electrical", "cord_through_wall"]] if some i, s in input.systems

exempt contains outcome if some outcome in wiring.outside

exempt contains [s.id, "the fan is hard-wired"] if {
	some s in input.systems
	s.id in wiring.fixed
}

judged contains s.id if {
	some s in input.systems
	s.id in wiring.judged
	s.id in wiring.plugged
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.electrical.cord_through_wall == false
}

deficient contains [s.id, ["systems", i, "electrical", "cord_through_wall"]] if {
	some i, s in input.systems
	s.id in judged
	s.electrical.cord_through_wall == true
}

missing contains gap if some gap in wiring.unsaid

missing contains gap if some gap in wiring.unwired

missing contains [s.id, ["systems", i, "electrical", "cord_through_wall"]] if {
	some i, s in input.systems
	not is_boolean(s.electrical.cord_through_wall)
}
