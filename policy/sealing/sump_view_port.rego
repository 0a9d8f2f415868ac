# METADATA
# title: One can look into the sump without lifting the lid
# description: Whoever cannot see that the pump works will break the seal to find out.
# custom:
#   subject: sump
#   grade: recommended
#   stage: running
#   remedy: Fit a clear lid or a view port.
#   caution: Unplug the pump and prove it dead before reaching into the pit.
package policy.sealing.sump_view_port

import data.policy.routes
import rego.v2

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "sump", "lid_view_port"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
}

exempt contains outcome if some outcome in routes.bare

met contains r.id if {
	some r in input.entry_routes
	r.id in routes.lidded
	r.sump.lid_view_port == true
}

deficient contains [r.id, ["entry_routes", i, "sump", "lid_view_port"]] if {
	some i, r in input.entry_routes
	r.id in routes.lidded
	r.sump.lid_view_port == false
}

missing contains gap if some gap in routes.untreated_sumps

missing contains [r.id, ["entry_routes", i, "sump", "lid_view_port"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_boolean(r.sump.lid_view_port)
}
