# METADATA
# title: The pipe put in with a new house fits the foundation area it serves
# description: Pipe cast into a new house is there for good; one that is too small cannot clear the slab later.
# custom:
#   subject: system
#   grade: required
#   stage: roughed-in
#   remedy: Put in the larger pipe or a further system before the slab is poured.
#   limits:
#     small_size: {dimension: length, sense: at-least}
#     small_area: {dimension: area, sense: at-most}
#     large_size: {dimension: length, sense: at-least}
#     large_area: {dimension: area, sense: at-most}
#     not_for: {dimension: choice, sense: not-for}
package policy.pipe.rough_in_size

import data.policy.houses
import data.policy.systems
import rego.v2

limits := data.profile.pipe.rough_in_size

subjects contains ["systems", ["systems"]] if not is_array(input.systems)
subjects contains [s.id, ["systems", i, "rough_in", "foundation_area"]] if some i, s in input.systems
exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "its source does not speak of a house of this age"] if {
	some s in input.systems
	houses.left_out(limits.not_for.any_of)
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	houses.meant(limits.not_for.any_of)
}

fits contains d.id if {
	some d in input.derived.systems
	some s in input.systems
	s.id == d.id
	d.smallest_bore.si >= limits.small_size.si
	s.rough_in.foundation_area.si <= limits.small_area.si
}

fits contains d.id if {
	some d in input.derived.systems
	some s in input.systems
	s.id == d.id
	d.smallest_bore.si >= limits.large_size.si
	s.rough_in.foundation_area.si <= limits.large_area.si
}

met contains id if {
	some id in judged
	id in fits
}

undetermined contains [s.id, ["systems", i, "rough_in", "foundation_area"], "the part of the table that was read has no pipe this wide"] if {
	some i, s in input.systems
	s.id in judged
	s.rough_in.foundation_area.si > limits.large_area.si
	some d in input.derived.systems
	d.id == s.id
	d.smallest_bore.si > limits.large_size.si
}

deficient contains [d.id, ["derived", "systems", i, "smallest_bore"], "small_size"] if {
	some i, d in input.derived.systems
	d.id in judged
	d.smallest_bore.si < limits.small_size.si
	some s in input.systems
	s.id == d.id
	s.rough_in.foundation_area.si <= limits.small_area.si
}

deficient contains [d.id, ["derived", "systems", i, "smallest_bore"], "large_size"] if {
	some i, d in input.derived.systems
	d.id in judged
	d.smallest_bore.si < limits.large_size.si
	some s in input.systems
	s.id == d.id
	s.rough_in.foundation_area.si > limits.small_area.si
}

deficient contains [s.id, ["systems", i, "rough_in", "foundation_area"], "large_area"] if {
	some i, s in input.systems
	s.id in judged
	s.rough_in.foundation_area.si > limits.large_area.si
	some d in input.derived.systems
	d.id == s.id
	d.smallest_bore.si <= limits.large_size.si
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["house", "new_construction"]] if {
	some s in input.systems
	houses.untold(limits.not_for.any_of)
}

missing contains [d.id, ["derived", "systems", i, "smallest_bore"]] if {
	some i, d in input.derived.systems
	not is_number(d.smallest_bore.si)
}

missing contains [s.id, ["systems", i, "rough_in", "foundation_area"]] if {
	some i, s in input.systems
	not is_number(s.rough_in.foundation_area.si)
}
