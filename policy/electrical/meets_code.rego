# METADATA
# title: The wiring was done to the electrical code in force
# description: Poor wiring starts fires and shocks, years after the crew has gone.
# custom:
#   subject: system
#   grade: hazard
#   stage: running
#   remedy: Have a licensed electrician check and correct the wiring.
#   caution: Wiring is work for licensed people; cut the power and prove it dead first.
package policy.electrical.meets_code

import data.policy.wiring
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "electrical", "meets_code"]] if some i, s in input.systems

exempt contains outcome if some outcome in wiring.outside

met contains s.id if {
	some s in input.systems
	s.id in wiring.judged
	s.electrical.meets_code == true
}

deficient contains [s.id, ["systems", i, "electrical", "meets_code"]] if {
	some i, s in input.systems
	s.id in wiring.judged
	s.electrical.meets_code == false
}

missing contains gap if some gap in wiring.unsaid

missing contains [s.id, ["systems", i, "electrical", "meets_code"]] if {
	some i, s in input.systems
	not is_boolean(s.electrical.meets_code)
}
