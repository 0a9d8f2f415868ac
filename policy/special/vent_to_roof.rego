# METADATA
# title: The vent pipe of a new house goes from below the slab out through the roof
# description: A pipe that ends indoors carries soil gas up into the house.
# custom:
#   subject: system
#   grade: required
#   stage: roughed-in
#   remedy: Take the pipe up through the roof.
#   caution: Roof work needs fall protection.
#   limits:
#     not_for: {dimension: choice, sense: none-of}
#     regions: {dimension: choice, sense: one-of}
package policy.special.vent_to_roof

import data.policy.houses
import data.policy.systems
import rego.v2

limits := data.profile.special.vent_to_roof

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "rough_in", "reaches_roof"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(limits.not_for.any_of)
}

exempt contains [id, "its source is the code of another region"] if {
	some [id, _] in subjects
	is_string(input.job.jurisdiction.state)
	not input.job.jurisdiction.state in limits.regions.any_of
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	houses.meant(limits.not_for.any_of)
	input.job.jurisdiction.state in limits.regions.any_of
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.rough_in.reaches_roof == true
}

deficient contains [s.id, ["systems", i, "rough_in", "reaches_roof"]] if {
	some i, s in input.systems
	s.id in judged
	s.rough_in.reaches_roof == false
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(limits.not_for.any_of)
}

missing contains [id, ["job", "jurisdiction", "state"]] if {
	some [id, _] in subjects
	not is_string(input.job.jurisdiction.state)
}

missing contains [s.id, ["systems", i, "rough_in", "reaches_roof"]] if {
	some i, s in input.systems
	not is_boolean(s.rough_in.reaches_roof)
}
