# METADATA
# title: A circuit ends in an approved box where a later fan would go
# description: With power at hand the fan is in within an hour; without it the stack stays a stack.
# custom:
#   subject: system
#   grade: required
#   stage: roughed-in
#   remedy: Have a circuit brought to the place of the later fan, ending in an approved box.
#   caution: Wiring is work for licensed people; cut the power and prove it dead first.
package policy.electrical.box_provided

import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)
subjects contains [s.id, ["systems", i, "electrical", "box_provided"]] if some i, s in input.systems
exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "it has its fan"] if {
	some s in input.systems
	s.powered_by == "fan"
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	is_string(s.powered_by)
	s.powered_by != "fan"
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.electrical.box_provided == true
}

deficient contains [s.id, ["systems", i, "electrical", "box_provided"]] if {
	some i, s in input.systems
	s.id in judged
	s.electrical.box_provided == false
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "electrical", "box_provided"]] if {
	some i, s in input.systems
	not is_boolean(s.electrical.box_provided)
}
