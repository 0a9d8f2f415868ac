# METADATA
# title: Under mixed foundations each part has its pipe or a drain loop joins them
# description: Suction below the basement does not reach the slab on the other side of the wall.
# custom:
#   subject: system
#   grade: required
#   stage: roughed-in
#   remedy: Give each part its own pipe, or join the parts by a continuous drain loop, before concrete is poured.
#   limits:
#     separate: {dimension: choice, sense: one-of}
#     not_for: {dimension: choice, sense: none-of}
package policy.special.combined_foundations

import data.policy.houses
import data.policy.systems
import rego.v2

limits := data.profile.special.combined_foundations

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "rough_in", "combined_foundations_piped"]] if some i, s in input.systems

kinds contains f.kind if {
	some f in input.house.foundations
	f.kind in limits.separate.any_of
}

unknown contains i if {
	some i, f in input.house.foundations
	not is_string(f.kind)
}

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(limits.not_for.any_of)
}

exempt contains [id, "the house stands on one kind of foundation"] if {
	some [id, _] in subjects
	is_array(input.house.foundations)
	count(unknown) == 0
	count(kinds) < 2
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	houses.meant(limits.not_for.any_of)
	count(kinds) > 1
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.rough_in.combined_foundations_piped == true
}

deficient contains [s.id, ["systems", i, "rough_in", "combined_foundations_piped"]] if {
	some i, s in input.systems
	s.id in judged
	s.rough_in.combined_foundations_piped == false
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(limits.not_for.any_of)
}

missing contains [id, ["house", "foundations"]] if {
	some [id, _] in subjects
	not is_array(input.house.foundations)
}

missing contains [id, ["house", "foundations", i, "kind"]] if {
	some [id, _] in subjects
	some i in unknown
}

missing contains [s.id, ["systems", i, "rough_in", "combined_foundations_piped"]] if {
	some i, s in input.systems
	not is_boolean(s.rough_in.combined_foundations_piped)
}
