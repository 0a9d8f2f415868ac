# METADATA
# title: The plug cord is short enough
# description: A long cord gets draped, pinched and walked on until it is bare.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Have an outlet put near the fan, or the fan wired in.
#   caution: Wiring is work for licensed people; cut the power and prove it dead first.
#   limits:
#     maximum: {dimension: length, sense: at-most}
package policy.electrical.cord_length

import data.policy.wiring
import rego.v2

limits := data.profile.electrical.cord_length

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "electrical", "cord_length"]] if some i, s in input.systems

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
	s.electrical.cord_length.si <= limits.maximum.si
}

deficient contains [s.id, ["systems", i, "electrical", "cord_length"], "maximum"] if {
	some i, s in input.systems
	s.id in judged
	s.electrical.cord_length.si > limits.maximum.si
}

missing contains gap if some gap in wiring.unsaid

missing contains gap if some gap in wiring.unwired

missing contains [s.id, ["systems", i, "electrical", "cord_length"]] if {
	some i, s in input.systems
	not is_number(s.electrical.cord_length.si)
}
