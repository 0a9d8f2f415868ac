# METADATA
# title: The level a new house was built to is what is there
# description: A house sold with a full stack and found with a stub has to be opened up again.
# custom:
#   subject: system
#   grade: required
#   stage: roughed-in
#   remedy: Record the level that was built, or build what was promised.
#   limits:
#     not_for: {dimension: choice, sense: none-of}
package policy.special.built_level

import data.policy.houses
import data.policy.systems
import rego.v2

not_for := data.profile.special.built_level.not_for.any_of

levels := {["rough-in", "rough-in"], ["passive-stack", "passive"], ["active", "fan"]}

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "rough_in", "level"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(not_for)
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	is_string(s.powered_by)
	is_string(s.rough_in.level)
	houses.meant(not_for)
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	[s.rough_in.level, s.powered_by] in levels
}

deficient contains [s.id, ["systems", i, "rough_in", "level"]] if {
	some i, s in input.systems
	s.id in judged
	not [s.rough_in.level, s.powered_by] in levels
}

missing contains gap if some gap in systems.unsaid

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(not_for)
}

missing contains [s.id, ["systems", i, "rough_in", "level"]] if {
	some i, s in input.systems
	not is_string(s.rough_in.level)
}
