# METADATA
# title: Hollow block walls end in a solid or grouted course
# description: Open cores carry soil gas from the footing to the rooms above.
# custom:
#   subject: foundation wall
#   grade: required
#   stage: roughed-in
#   remedy: Grout the top course or lay one of solid block before the sill goes on.
#   caution: Grouting block raises dust and splashes; wear eye protection and gloves.
#   limits:
#     tops: {dimension: choice, sense: one-of}
#     not_for: {dimension: choice, sense: not-for}
package policy.sealing.block_tops

import data.policy.houses
import rego.v2

limits := data.profile.sealing.block_tops

subjects contains ["house", ["house", "foundations"]] if not is_array(input.house.foundations)

subjects contains [f.id, ["house", "foundations", i, "block_tops"]] if {
	some i, f in input.house.foundations
	f.wall_kind == "hollow-block"
}

subjects contains [f.id, ["house", "foundations", i, "wall_kind"]] if {
	some i, f in input.house.foundations
	not is_string(f.wall_kind)
}

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(limits.not_for.any_of)
}

met contains f.id if {
	some f in input.house.foundations
	f.wall_kind == "hollow-block"
	houses.meant(limits.not_for.any_of)
	f.block_tops in limits.tops.any_of
}

deficient contains [f.id, ["house", "foundations", i, "block_tops"], "tops"] if {
	some i, f in input.house.foundations
	f.wall_kind == "hollow-block"
	houses.meant(limits.not_for.any_of)
	is_string(f.block_tops)
	not f.block_tops in limits.tops.any_of
}

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(limits.not_for.any_of)
}

missing contains [f.id, ["house", "foundations", i, "wall_kind"]] if {
	some i, f in input.house.foundations
	not is_string(f.wall_kind)
}

missing contains [f.id, ["house", "foundations", i, "block_tops"]] if {
	some i, f in input.house.foundations
	f.wall_kind == "hollow-block"
	not is_string(f.block_tops)
}
