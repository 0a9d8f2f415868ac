# METADATA
# title: Open cores of hollow block are closed
# description: The cores join into one duct that carries soil gas up inside the wall to every room above.
# custom:
#   subject: block core
#   grade: recommended
#   stage: running
#   remedy: Close the cores at the top of the wall and round every pipe that opens them.
#   caution: Cutting concrete raises silica dust; use a shroud with dust collector or water.
#   limits:
#     treatments: {dimension: choice, sense: one-of}
package policy.sealing.block_cores

import data.policy.routes
import rego.v2

treatments := data.profile.sealing.block_cores.treatments.any_of

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.kind == "block-core"
}

exempt contains [r.id, reason] if {
	some [id, reason] in routes.unreachable
	some r in input.entry_routes
	r.id == id
	r.kind == "block-core"
}

met contains r.id if {
	some r in input.entry_routes
	r.kind == "block-core"
	r.treatment in treatments
}

deficient contains [r.id, ["entry_routes", i, "treatment"], "treatments"] if {
	some i, r in input.entry_routes
	r.kind == "block-core"
	is_string(r.treatment)
	not r.treatment in treatments
}
