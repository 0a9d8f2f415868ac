# METADATA
# title: Pipes and cords through the sump lid are sealed
# description: A cord hole the size of a thumb can waste more suction than all the cracks of the slab.
# custom:
#   subject: sump
#   grade: required
#   stage: running
#   remedy: Close the gaps with caulk or grommets.
#   caution: Unplug the pump and prove it dead before reaching into the pit.
package policy.sealing.sump_lid_penetrations

import data.policy.routes
import rego.v2

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "sump", "lid_penetrations_sealed"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
}

exempt contains outcome if some outcome in routes.bare

met contains r.id if {
	some r in input.entry_routes
	r.id in routes.lidded
	r.sump.lid_penetrations_sealed == true
}

deficient contains [r.id, ["entry_routes", i, "sump", "lid_penetrations_sealed"]] if {
	some i, r in input.entry_routes
	r.id in routes.lidded
	r.sump.lid_penetrations_sealed == false
}

missing contains gap if some gap in routes.untreated_sumps

missing contains [r.id, ["entry_routes", i, "sump", "lid_penetrations_sealed"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_boolean(r.sump.lid_penetrations_sealed)
}
