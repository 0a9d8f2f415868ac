# METADATA
# title: The sump lid comes off for service
# description: A lid that has to be broken to reach the pump is never sealed again.
# custom:
#   subject: sump
#   grade: required
#   stage: running
#   remedy: Replace permanent caulk by a gasket or a removable bead of silicone.
#   caution: Unplug the pump and prove it dead before reaching into the pit.
package policy.sealing.sump_lid_removable

import data.policy.routes
import rego.v2

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "removable"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
}

exempt contains outcome if some outcome in routes.bare

met contains r.id if {
	some r in input.entry_routes
	r.id in routes.lidded
	r.removable == true
}

deficient contains [r.id, ["entry_routes", i, "removable"]] if {
	some i, r in input.entry_routes
	r.id in routes.lidded
	r.removable == false
}

missing contains gap if some gap in routes.untreated_sumps

missing contains [r.id, ["entry_routes", i, "removable"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_boolean(r.removable)
}
