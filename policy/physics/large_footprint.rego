# METADATA
# title: A large slab on gravel has a high-flow fan and wide pipe throughout
# description: Under a large slab gravel lets much air through; a usual fan on narrow pipe leaves the far rooms unprotected.
# custom:
#   subject: system
#   grade: recommended
#   stage: roughed-in
#   remedy: Use a high-flow fan on 4-inch pipe from the pit to the outlet, or add a second system.
#   limits:
#     area: {dimension: area, sense: at-most}
#     size: {dimension: length, sense: at-least}
#     fills: {dimension: choice, sense: applies-to}
#     classes: {dimension: choice, sense: one-of}
#     kinds: {dimension: choice, sense: applies-to}
package policy.physics.large_footprint

import data.policy.slabs
import data.policy.systems
import rego.v2

limits := data.profile.physics.large_footprint

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "area_treated"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "systems of this kind are sized in another way"] if {
	some s in input.systems
	is_string(s.kind)
	is_array(limits.kinds.any_of)
	not s.kind in limits.kinds.any_of
}

exempt contains [d.id, "the footprint is not large"] if {
	some d in input.derived.systems
	d.area_treated.si <= limits.area.si
}

exempt contains [s.id, "no gravel lies under the areas it treats"] if {
	some s in input.systems
	s.id in slabs.told
	is_array(limits.fills.any_of)
	not s.id in gravelly
}

gravelly contains id if {
	some [id, fill] in slabs.fills
	fill in limits.fills.any_of
}

judged contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.kind in limits.kinds.any_of
	s.id in gravelly
	some d in input.derived.systems
	d.id == s.id
	d.area_treated.si > limits.area.si
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.fan.class in limits.classes.any_of
	some d in input.derived.systems
	d.id == s.id
	d.smallest_bore.si >= limits.size.si
}

deficient contains [s.id, ["systems", i, "fan", "class"], "classes"] if {
	some i, s in input.systems
	s.id in judged
	is_string(s.fan.class)
	not s.fan.class in limits.classes.any_of
}

deficient contains [d.id, ["derived", "systems", i, "smallest_bore"], "size"] if {
	some i, d in input.derived.systems
	d.id in judged
	d.smallest_bore.si < limits.size.si
}

missing contains gap if some gap in systems.unsaid

missing contains gap if some gap in slabs.untold

missing contains [s.id, ["systems", i, "fan", "class"]] if {
	some i, s in input.systems
	not is_string(s.fan.class)
}

missing contains [d.id, ["derived", "systems", i, "area_treated"]] if {
	some i, d in input.derived.systems
	not is_number(d.area_treated.si)
}

missing contains [d.id, ["derived", "systems", i, "smallest_bore"]] if {
	some i, d in input.derived.systems
	not is_number(d.smallest_bore.si)
}
