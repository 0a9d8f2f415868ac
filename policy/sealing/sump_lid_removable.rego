# METADATA
# title: The sump lid comes off for service
# description: A lid that has to be broken to reach the pump is never sealed again.
# custom:
#   subject: sump
#   grade: required
#   stage: running
#   remedy: Replace permanent caulk by a gasket or a removable bead of silicone.
#   caution: Unplug the pump and prove it dead before reaching into the pit.
#   limits:
#     not_for: {dimension: choice, sense: one-of}
package policy.sealing.sump_lid_removable

import data.policy.houses
import data.policy.routes
import rego.v2

not_for := data.profile.sealing.sump_lid_removable.not_for.any_of

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "removable"]] if {
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
	r.removable == true
}

deficient contains [r.id, ["entry_routes", i, "removable"]] if {
	some i, r in input.entry_routes
	r.id in routes.lidded
	houses.meant(not_for)
	r.removable == false
}

missing contains gap if some gap in routes.unlisted

missing contains gap if some gap in routes.untreated_sumps

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(not_for)
}

missing contains [r.id, ["entry_routes", i, "removable"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_boolean(r.removable)
}
