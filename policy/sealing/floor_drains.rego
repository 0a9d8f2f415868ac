# METADATA
# title: Floor drains do not let soil gas in
# description: A dry floor drain joins the room to the gravel below, and nobody looks at it for years.
# custom:
#   subject: drain
#   grade: required
#   stage: running
#   remedy: Fit a trap that stays full or a drain insert that closes by itself.
#   caution: Plumbing work is for licensed people.
#   limits:
#     kinds: {dimension: choice, sense: applies-to}
#     not_for: {dimension: choice, sense: not-for}
package policy.sealing.floor_drains

import data.policy.houses
import data.policy.routes
import rego.v2

limits := data.profile.sealing.floor_drains

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "admits_soil_gas"]] if {
	some i, r in input.entry_routes
	r.kind in limits.kinds.any_of
}

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(limits.not_for.any_of)
}

met contains r.id if {
	some r in input.entry_routes
	r.kind in limits.kinds.any_of
	houses.meant(limits.not_for.any_of)
	r.admits_soil_gas == false
}

deficient contains [r.id, ["entry_routes", i, "admits_soil_gas"]] if {
	some i, r in input.entry_routes
	r.kind in limits.kinds.any_of
	houses.meant(limits.not_for.any_of)
	r.admits_soil_gas == true
}

missing contains gap if some gap in routes.unlisted

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(limits.not_for.any_of)
}

missing contains [r.id, ["entry_routes", i, "admits_soil_gas"]] if {
	some i, r in input.entry_routes
	r.kind in limits.kinds.any_of
	not is_boolean(r.admits_soil_gas)
}
