# METADATA
# title: A fan can be fitted later where nobody lives
# description: A stack walled in from floor to roof cannot be helped by a fan when the test comes back high.
# custom:
#   subject: system
#   grade: required
#   stage: roughed-in
#   remedy: Leave a reachable length of the pipe in the attic or outside, with room for a fan.
package policy.pipe.fan_accessible

import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)
subjects contains [s.id, ["systems", i, "rough_in", "fan_accessible"]] if some i, s in input.systems
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
	s.rough_in.fan_accessible == true
}

deficient contains [s.id, ["systems", i, "rough_in", "fan_accessible"]] if {
	some i, s in input.systems
	s.id in judged
	s.rough_in.fan_accessible == false
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "rough_in", "fan_accessible"]] if {
	some i, s in input.systems
	not is_boolean(s.rough_in.fan_accessible)
}
