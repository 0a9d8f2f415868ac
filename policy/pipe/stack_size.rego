# METADATA
# title: The stack is at least as wide as the widest pipe that legs run together in
# description: One narrow length at the end chokes everything before it.
# custom:
#   subject: system
#   grade: required
#   stage: roughed-in
#   remedy: Carry the larger size through to the outlet.
#   limits:
#     points: {dimension: number, sense: at-least}
package policy.pipe.stack_size

import data.policy.systems
import rego.v2

limits := data.profile.pipe.stack_size

subjects contains ["systems", ["systems"]] if not is_array(input.systems)
subjects contains [s.id, ["systems", i, "pipe"]] if some i, s in input.systems
exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "no legs run together in it"] if {
	some s in input.systems
	count(s.suction_points) < limits.points.si
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	count(s.suction_points) >= limits.points.si
}

met contains d.id if {
	some d in input.derived.systems
	d.id in judged
	d.smallest_main_bore.si >= d.largest_manifold_bore.si
}

deficient contains [d.id, ["derived", "systems", i, "smallest_main_bore"]] if {
	some i, d in input.derived.systems
	d.id in judged
	d.smallest_main_bore.si < d.largest_manifold_bore.si
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "suction_points"]] if {
	some i, s in input.systems
	not is_array(s.suction_points)
}

missing contains [d.id, ["derived", "systems", i, "smallest_main_bore"]] if {
	some i, d in input.derived.systems
	not is_number(d.smallest_main_bore.si)
}

missing contains [d.id, ["derived", "systems", i, "largest_manifold_bore"]] if {
	some i, d in input.derived.systems
	not is_number(d.largest_manifold_bore.si)
}
