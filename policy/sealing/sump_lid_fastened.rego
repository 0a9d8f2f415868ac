# METADATA
# title: The sump lid is held down by screws or bolts
# description: A lid that only lies there is kicked aside, and then a child can fall into the pit.
# custom:
#   subject: sump
#   grade: required
#   stage: running
#   remedy: Fasten the lid with screws or bolts that come out again for service.
#   caution: Unplug the pump and prove it dead before reaching into the pit.
package policy.sealing.sump_lid_fastened

import data.policy.routes
import rego.v2

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "sump", "lid_fastened"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
}

exempt contains outcome if some outcome in routes.bare

met contains r.id if {
	some r in input.entry_routes
	r.id in routes.lidded
	r.sump.lid_fastened == true
}

deficient contains [r.id, ["entry_routes", i, "sump", "lid_fastened"]] if {
	some i, r in input.entry_routes
	r.id in routes.lidded
	r.sump.lid_fastened == false
}

missing contains gap if some gap in routes.untreated_sumps

missing contains [r.id, ["entry_routes", i, "sump", "lid_fastened"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_boolean(r.sump.lid_fastened)
}
