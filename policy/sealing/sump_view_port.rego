# METADATA
# title: One can look into the sump without lifting the lid
# description: Whoever cannot see that the pump works will break the seal to find out.
# custom:
#   subject: sump
#   grade: recommended
#   stage: running
#   remedy: Fit a clear lid or a view port.
#   caution: Unplug the pump and prove it dead before reaching into the pit.
#   limits:
#     not_for: {dimension: choice, sense: one-of}
package policy.sealing.sump_view_port

import data.policy.houses
import data.policy.routes
import rego.v2

not_for := data.profile.sealing.sump_view_port.not_for.any_of

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "sump", "lid_view_port"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
}

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(not_for)
}

exempt contains outcome if some outcome in routes.bare

met contains r.id if {
	some r in input.entry_routes
	r.id in routes.lidded
	houses.meant(not_for)
	r.sump.lid_view_port == true
}

deficient contains [r.id, ["entry_routes", i, "sump", "lid_view_port"]] if {
	some i, r in input.entry_routes
	r.id in routes.lidded
	houses.meant(not_for)
	r.sump.lid_view_port == false
}

missing contains gap if some gap in routes.unlisted

missing contains gap if some gap in routes.untreated_sumps

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(not_for)
}

missing contains [r.id, ["entry_routes", i, "sump", "lid_view_port"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_boolean(r.sump.lid_view_port)
}
