# METADATA
# title: Joints, channels and cracks in reach are sealed with urethane or its equal
# description: The joint between wall and floor runs round the whole house; a hair of width there adds up to a large hole.
# custom:
#   subject: joint
#   grade: required
#   stage: running
#   remedy: Clean the joint and seal it with urethane caulk.
#   caution: Sealants and foams give off vapor; air the room and keep flames away.
#   limits:
#     kinds: {dimension: choice, sense: applies-to}
#     materials: {dimension: choice, sense: one-of}
#     equals: {dimension: choice, sense: one-of}
package policy.sealing.joint_material

import data.policy.routes
import rego.v2

limits := data.profile.sealing.joint_material

joints contains r.id if {
	some r in input.entry_routes
	r.kind in limits.kinds.any_of
}

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "material"]] if {
	some i, r in input.entry_routes
	r.id in joints
}

exempt contains [id, reason] if {
	some [id, reason] in routes.unreachable
	id in joints
}

met contains r.id if {
	some r in input.entry_routes
	r.id in joints
	r.treatment in routes.shut
	r.material in limits.materials.any_of
}

met contains r.id if {
	some r in input.entry_routes
	r.id in joints
	r.treatment in routes.shut
	r.sealant_standard in limits.equals.any_of
}

deficient contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.id in joints
	is_string(r.treatment)
	not r.treatment in routes.shut
}

deficient contains [r.id, ["entry_routes", i, "material"], "materials"] if {
	some i, r in input.entry_routes
	r.id in joints
	r.treatment in routes.shut
	is_string(r.material)
	not r.material in limits.materials.any_of
	is_string(r.sealant_standard)
	not r.sealant_standard in limits.equals.any_of
}

missing contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.id in joints
	not is_string(r.treatment)
}

missing contains [r.id, ["entry_routes", i, "material"]] if {
	some i, r in input.entry_routes
	r.id in joints
	not is_string(r.material)
}

missing contains [r.id, ["entry_routes", i, "sealant_standard"]] if {
	some i, r in input.entry_routes
	r.id in joints
	is_string(r.material)
	not r.material in limits.materials.any_of
	not is_string(r.sealant_standard)
}
