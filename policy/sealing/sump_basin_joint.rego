# METADATA
# title: The joint between sump basin and slab is caulked
# description: Soil gas that cannot pass the lid goes round the basin.
# custom:
#   subject: sump
#   grade: required
#   stage: running
#   remedy: Clean the joint between basin and slab and caulk it with a sealant of the class asked for.
#   caution: Sealants give off vapor; air the room.
#   limits:
#     classes: {dimension: choice, sense: one-of}
#     not_for: {dimension: choice, sense: not-for}
package policy.sealing.sump_basin_joint

import data.policy.houses
import data.policy.routes
import rego.v2

limits := data.profile.sealing.sump_basin_joint

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "sump", "basin_joint_sealed"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
}

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(limits.not_for.any_of)
}

met contains r.id if {
	some r in input.entry_routes
	r.kind == "sump"
	houses.meant(limits.not_for.any_of)
	r.sump.basin_joint_sealed == true
	r.sealant_standard in limits.classes.any_of
}

deficient contains [r.id, ["entry_routes", i, "sump", "basin_joint_sealed"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	houses.meant(limits.not_for.any_of)
	r.sump.basin_joint_sealed == false
}

deficient contains [r.id, ["entry_routes", i, "sealant_standard"], "classes"] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	houses.meant(limits.not_for.any_of)
	is_string(r.sealant_standard)
	not r.sealant_standard in limits.classes.any_of
}

missing contains gap if some gap in routes.unlisted

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(limits.not_for.any_of)
}

missing contains [r.id, ["entry_routes", i, "sump", "basin_joint_sealed"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_boolean(r.sump.basin_joint_sealed)
}

missing contains [r.id, ["entry_routes", i, "sealant_standard"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_string(r.sealant_standard)
}
