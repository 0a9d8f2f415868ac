# METADATA
# title: The sump lid is airtight
# description: Through a loose lid the fan pulls room air in place of soil gas, and with the fan off the gas comes up.
# custom:
#   subject: sump
#   grade: required
#   stage: running
#   remedy: Seat the lid on a gasket or a removable bead of silicone until smoke is no longer drawn in along its rim.
#   caution: Unplug the pump and prove it dead before reaching into the pit.
package policy.sealing.sump_lid_airtight

import data.policy.routes
import rego.v2

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "sump", "lid_airtight"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
}

exempt contains outcome if some outcome in routes.bare

met contains r.id if {
	some r in input.entry_routes
	r.id in routes.lidded
	r.sump.lid_airtight == true
}

deficient contains [r.id, ["entry_routes", i, "sump", "lid_airtight"]] if {
	some i, r in input.entry_routes
	r.id in routes.lidded
	r.sump.lid_airtight == false
}

missing contains gap if some gap in routes.untreated_sumps

missing contains [r.id, ["entry_routes", i, "sump", "lid_airtight"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_boolean(r.sump.lid_airtight)
}
