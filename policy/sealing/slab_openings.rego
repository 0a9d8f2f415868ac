# METADATA
# title: Holes in the slab are filled with a material made for it
# description: A hole with a board or tape over it is open again after the first wet season.
# custom:
#   subject: slab opening
#   grade: required
#   stage: running
#   remedy: Fill the hole to the full depth of the slab.
#   caution: Sealants and foams give off vapor; air the room and keep flames away.
#   limits:
#     kinds: {dimension: choice, sense: applies-to}
#     materials: {dimension: choice, sense: one-of}
#     equals: {dimension: choice, sense: one-of}
package policy.sealing.slab_openings

import data.policy.routes
import rego.v2

limits := data.profile.sealing.slab_openings

holes contains r.id if {
	some r in input.entry_routes
	r.kind in limits.kinds.any_of
}

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "material"]] if {
	some i, r in input.entry_routes
	r.id in holes
}

exempt contains [id, reason] if {
	some [id, reason] in routes.unreachable
	id in holes
}

met contains r.id if {
	some r in input.entry_routes
	r.id in holes
	r.treatment in routes.shut
	r.material in limits.materials.any_of
}

met contains r.id if {
	some r in input.entry_routes
	r.id in holes
	r.treatment in routes.shut
	r.sealant_standard in limits.equals.any_of
}

deficient contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.id in holes
	is_string(r.treatment)
	not r.treatment in routes.shut
}

deficient contains [r.id, ["entry_routes", i, "material"], "materials"] if {
	some i, r in input.entry_routes
	r.id in holes
	r.treatment in routes.shut
	is_string(r.material)
	not r.material in limits.materials.any_of
	is_string(r.sealant_standard)
	not r.sealant_standard in limits.equals.any_of
}

missing contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.id in holes
	not is_string(r.treatment)
}

missing contains [r.id, ["entry_routes", i, "material"]] if {
	some i, r in input.entry_routes
	r.id in holes
	not is_string(r.material)
}

missing contains [r.id, ["entry_routes", i, "sealant_standard"]] if {
	some i, r in input.entry_routes
	r.id in holes
	is_string(r.material)
	not r.material in limits.materials.any_of
	not is_string(r.sealant_standard)
}
