# METADATA
# title: Drainage mat in sand is large enough and runs along the walls
# description: Sand alone passes little air; the mat is what gathers it.
# custom:
#   subject: system
#   grade: required
#   stage: roughed-in
#   remedy: Lay mat of the section called for, round the inside of the walls at the distance called for, before the slab is poured.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
#     not_for: {dimension: choice, sense: none-of}
#     section: {dimension: area, sense: at-least}
#     nearest: {dimension: length, sense: at-least}
#     farthest: {dimension: length, sense: at-most}
package policy.special.drainage_mat

import data.policy.houses
import rego.v2

limits := data.profile.special.drainage_mat

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "rough_in", "mat_section"]] if some i, s in input.systems

exempt contains [s.id, "its source asks this of other kinds of system"] if {
	some s in input.systems
	is_string(s.kind)
	not s.kind in limits.kinds.any_of
}

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(limits.not_for.any_of)
}

exempt contains [s.id, "another kind of layer lies below the slab"] if {
	some s in input.systems
	is_string(s.rough_in.layer)
	s.rough_in.layer != "sand-and-mat"
}

judged contains s.id if {
	some s in input.systems
	s.kind in limits.kinds.any_of
	houses.meant(limits.not_for.any_of)
	s.rough_in.layer == "sand-and-mat"
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.rough_in.mat_section.si >= limits.section.si
	s.rough_in.mat_wall_distance.si >= limits.nearest.si
	s.rough_in.mat_wall_distance.si <= limits.farthest.si
}

deficient contains [s.id, ["systems", i, "rough_in", "mat_section"], "section"] if {
	some i, s in input.systems
	s.id in judged
	s.rough_in.mat_section.si < limits.section.si
}

deficient contains [s.id, ["systems", i, "rough_in", "mat_wall_distance"], "nearest"] if {
	some i, s in input.systems
	s.id in judged
	s.rough_in.mat_wall_distance.si < limits.nearest.si
}

deficient contains [s.id, ["systems", i, "rough_in", "mat_wall_distance"], "farthest"] if {
	some i, s in input.systems
	s.id in judged
	s.rough_in.mat_wall_distance.si > limits.farthest.si
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

missing contains [s.id, ["systems", i, "rough_in", "mat_section"]] if {
	some i, s in input.systems
	not is_number(s.rough_in.mat_section.si)
}

missing contains [s.id, ["systems", i, "rough_in", "mat_wall_distance"]] if {
	some i, s in input.systems
	not is_number(s.rough_in.mat_wall_distance.si)
}
