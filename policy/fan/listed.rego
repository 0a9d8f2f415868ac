# METADATA
# title: Fan and electrical parts carry a listing mark
# description: A listed fan was tested for running hot, wet and without end; others start fires.
# custom:
#   subject: fan
#   grade: required
#   stage: running
#   remedy: Replace parts that carry no mark of a testing laboratory.
#   caution: Wiring and work on a running fan are for licensed people; cut the power and prove it dead first.
package policy.fan.listed

import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "listed"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.fan.listed == true
}

deficient contains [s.id, ["systems", i, "fan", "listed"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.fan.listed == false
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "fan", "listed"]] if {
	some i, s in input.systems
	not is_boolean(s.fan.listed)
}
