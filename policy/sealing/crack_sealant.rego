# METADATA
# title: Cracks are sealed with a sealant that stands movement
# description: Concrete goes on moving, and brittle sealant tears loose in the first winter.
# custom:
#   subject: crack
#   grade: required
#   stage: running
#   remedy: Rake out the crack and seal it with a sealant of the class asked for.
#   caution: Sealants and foams give off vapor; air the room and keep flames away.
#   limits:
#     classes: {dimension: choice, sense: one-of}
package policy.sealing.crack_sealant

import data.policy.routes
import rego.v2

classes := data.profile.sealing.crack_sealant.classes.any_of

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "sealant_standard"]] if {
	some i, r in input.entry_routes
	r.kind == "crack"
}

exempt contains [r.id, "no sealant was put into it"] if {
	some r in input.entry_routes
	r.kind == "crack"
	is_string(r.treatment)
	not r.treatment in routes.shut
}

met contains r.id if {
	some r in input.entry_routes
	r.kind == "crack"
	r.treatment in routes.shut
	r.sealant_standard in classes
}

deficient contains [r.id, ["entry_routes", i, "sealant_standard"], "classes"] if {
	some i, r in input.entry_routes
	r.kind == "crack"
	r.treatment in routes.shut
	is_string(r.sealant_standard)
	not r.sealant_standard in classes
}

missing contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.kind == "crack"
	not is_string(r.treatment)
}

missing contains [r.id, ["entry_routes", i, "sealant_standard"]] if {
	some i, r in input.entry_routes
	r.kind == "crack"
	not is_string(r.sealant_standard)
}
