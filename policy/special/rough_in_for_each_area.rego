# METADATA
# title: Each slab area of a new house has a rough-in or system
# description: Suction does not pass a footing; the area left out lets radon in for all.
# custom:
#   subject: foundation area
#   grade: required
#   stage: roughed-in
#   remedy: Put in a pipe for the area before the slab is poured, or join it to one that has a pipe.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
#     not_for: {dimension: choice, sense: none-of}
package policy.special.rough_in_for_each_area

import data.policy.houses
import data.policy.systems
import rego.v2

limits := data.profile.special.rough_in_for_each_area

subjects contains ["house", ["house", "foundations"]] if not is_array(input.house.foundations)

subjects contains [f.id, ["house", "foundations", i, "kind"]] if some i, f in input.house.foundations

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(limits.not_for.any_of)
}

exempt contains [f.id, "its source asks for none in an area of this kind"] if {
	some f in input.house.foundations
	is_string(f.kind)
	not f.kind in limits.kinds.any_of
}

exempt contains [f.id, "no rooms lie over this garage"] if {
	some f in input.house.foundations
	f.kind == "garage-slab"
	input.house.garage.living_space_above == false
}

judged contains f.id if {
	some f in input.house.foundations
	f.kind in limits.kinds.any_of
	f.kind != "garage-slab"
	houses.meant(limits.not_for.any_of)
}

judged contains f.id if {
	some f in input.house.foundations
	f.kind in limits.kinds.any_of
	input.house.garage.living_space_above == true
	houses.meant(limits.not_for.any_of)
}

served contains f.id if {
	some f in input.house.foundations
	some s in input.systems
	s.kind in systems.soil_kinds
	f.id in s.foundations
}

met contains id if {
	some id in judged
	id in served
}

deficient contains [f.id, ["house", "foundations", i, "kind"]] if {
	is_array(input.systems)
	count(input.systems) == count([s.id | some s in input.systems; is_string(s.kind); is_array(s.foundations)])
	some i, f in input.house.foundations
	f.id in judged
	not f.id in served
}

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(limits.not_for.any_of)
}

missing contains ["house", ["house", "foundations"]] if not is_array(input.house.foundations)

missing contains [f.id, ["house", "foundations", i, "kind"]] if {
	some i, f in input.house.foundations
	not is_string(f.kind)
}

missing contains [f.id, ["house", "garage", "living_space_above"]] if {
	some f in input.house.foundations
	f.kind == "garage-slab"
	not is_boolean(input.house.garage.living_space_above)
}

missing contains [f.id, ["systems"]] if {
	some f in input.house.foundations
	not is_array(input.systems)
}

missing contains [f.id, ["systems", i, "kind"]] if {
	some f in input.house.foundations
	not f.id in served
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [f.id, ["systems", i, "foundations"]] if {
	some f in input.house.foundations
	not f.id in served
	some i, s in input.systems
	not is_array(s.foundations)
}
