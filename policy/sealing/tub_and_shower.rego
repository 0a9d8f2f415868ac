# METADATA
# title: The openings under tubs and showers are filled
# description: The plumber leaves a hole in the slab under the tub, open to the soil and hidden for good once the floor is laid.
# custom:
#   subject: tub or shower opening
#   grade: required
#   stage: running
#   remedy: Fill the opening to the full depth of the slab, through an access panel if need be.
#   caution: Sealants and foams give off vapor; air the room and keep flames away.
#   limits:
#     materials: {dimension: choice, sense: one-of}
#     equals: {dimension: choice, sense: one-of}
package policy.sealing.tub_and_shower

import data.policy.routes
import rego.v2

limits := data.profile.sealing.tub_and_shower

baths contains r.id if {
	some r in input.entry_routes
	r.kind in {"tub-opening", "shower-opening"}
}

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "material"]] if {
	some i, r in input.entry_routes
	r.id in baths
}

exempt contains [id, reason] if {
	some [id, reason] in routes.unreachable
	id in baths
}

met contains r.id if {
	some r in input.entry_routes
	r.id in baths
	r.treatment in routes.shut
	r.material in limits.materials.any_of
}

met contains r.id if {
	some r in input.entry_routes
	r.id in baths
	r.treatment in routes.shut
	r.sealant_standard in limits.equals.any_of
}

deficient contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.id in baths
	is_string(r.treatment)
	not r.treatment in routes.shut
}

deficient contains [r.id, ["entry_routes", i, "material"], "materials"] if {
	some i, r in input.entry_routes
	r.id in baths
	r.treatment in routes.shut
	is_string(r.material)
	not r.material in limits.materials.any_of
	is_string(r.sealant_standard)
	not r.sealant_standard in limits.equals.any_of
}

missing contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.id in baths
	not is_string(r.treatment)
}

missing contains [r.id, ["entry_routes", i, "material"]] if {
	some i, r in input.entry_routes
	r.id in baths
	not is_string(r.material)
}

missing contains [r.id, ["entry_routes", i, "sealant_standard"]] if {
	some i, r in input.entry_routes
	r.id in baths
	is_string(r.material)
	not r.material in limits.materials.any_of
	not is_string(r.sealant_standard)
}
