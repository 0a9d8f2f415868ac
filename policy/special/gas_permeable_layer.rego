# METADATA
# title: A layer that lets air through lies below the slab of a new house
# description: Without it suction ends a few feet from the pipe, and nobody can put it in later.
# custom:
#   subject: system
#   grade: required
#   stage: roughed-in
#   remedy: Have the layer put in before the slab is poured.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
#     not_for: {dimension: choice, sense: none-of}
#     layers: {dimension: choice, sense: one-of}
#     thickness: {dimension: length, sense: at-least}
package policy.special.gas_permeable_layer

import data.policy.houses
import rego.v2

limits := data.profile.special.gas_permeable_layer

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "rough_in", "layer"]] if some i, s in input.systems

exempt contains [s.id, "its source asks this of other kinds of system"] if {
	some s in input.systems
	is_string(s.kind)
	not s.kind in limits.kinds.any_of
}

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(limits.not_for.any_of)
}

judged contains s.id if {
	some s in input.systems
	s.kind in limits.kinds.any_of
	houses.meant(limits.not_for.any_of)
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.rough_in.layer in limits.layers.any_of
	s.rough_in.layer_thickness.si >= limits.thickness.si
}

deficient contains [s.id, ["systems", i, "rough_in", "layer"], "layers"] if {
	some i, s in input.systems
	s.id in judged
	is_string(s.rough_in.layer)
	not s.rough_in.layer in limits.layers.any_of
}

deficient contains [s.id, ["systems", i, "rough_in", "layer_thickness"], "thickness"] if {
	some i, s in input.systems
	s.id in judged
	s.rough_in.layer_thickness.si < limits.thickness.si
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(limits.not_for.any_of)
}

missing contains [s.id, ["systems", i, "rough_in", "layer"]] if {
	some i, s in input.systems
	not is_string(s.rough_in.layer)
}

missing contains [s.id, ["systems", i, "rough_in", "layer_thickness"]] if {
	some i, s in input.systems
	not is_number(s.rough_in.layer_thickness.si)
}
