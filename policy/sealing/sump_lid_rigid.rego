# METADATA
# title: The sump lid is rigid and durable
# description: A lid that bends under a foot lets go of its seal, and a weak one lets a child through.
# custom:
#   subject: sump
#   grade: required
#   stage: running
#   remedy: Fit a rigid lid that carries a person and fits the pit.
#   caution: Unplug the pump and prove it dead before reaching into the pit.
package policy.sealing.sump_lid_rigid

import data.policy.routes
import rego.v2

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "sump", "lid_rigid"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
}

exempt contains outcome if some outcome in routes.bare

met contains r.id if {
	some r in input.entry_routes
	r.id in routes.lidded
	r.sump.lid_rigid == true
}

deficient contains [r.id, ["entry_routes", i, "sump", "lid_rigid"]] if {
	some i, r in input.entry_routes
	r.id in routes.lidded
	r.sump.lid_rigid == false
}

missing contains gap if some gap in routes.untreated_sumps

missing contains [r.id, ["entry_routes", i, "sump", "lid_rigid"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_boolean(r.sump.lid_rigid)
}
