# METADATA
# title: Floor water still has a way out where the sealed pit was the only one
# description: When a pipe bursts or the water heater lets go, a sealed floor becomes a tub.
# custom:
#   subject: sump
#   grade: required
#   stage: running
#   remedy: Fit a trapped drain in the lid or a trapped floor drain.
#   caution: Unplug the pump and prove it dead before reaching into the pit.
#   limits:
#     drains: {dimension: choice, sense: one-of}
package policy.sealing.floor_water

import data.policy.routes
import rego.v2

drains := data.profile.sealing.floor_water.drains.any_of

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "sump", "alternative_drain"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
}

exempt contains [r.id, "the pit is not sealed and still takes the water"] if {
	some r in input.entry_routes
	r.kind == "sump"
	is_string(r.treatment)
	not r.treatment in routes.shut
}

exempt contains [r.id, "the pit was not the only way out for the water"] if {
	some r in input.entry_routes
	r.kind == "sump"
	r.sump.only_surface_drain == false
}

only contains r.id if {
	some r in input.entry_routes
	r.kind == "sump"
	r.treatment in routes.shut
	r.sump.only_surface_drain == true
}

met contains r.id if {
	some r in input.entry_routes
	r.id in only
	r.sump.alternative_drain in drains
}

deficient contains [r.id, ["entry_routes", i, "sump", "alternative_drain"], "drains"] if {
	some i, r in input.entry_routes
	r.id in only
	r.sump.alternative_drain == "none"
}

undetermined contains [r.id, ["entry_routes", i, "sump", "alternative_drain"], "nothing says that this other drain keeps soil gas out"] if {
	some i, r in input.entry_routes
	r.id in only
	is_string(r.sump.alternative_drain)
	r.sump.alternative_drain != "none"
	not r.sump.alternative_drain in drains
}

missing contains gap if some gap in routes.untreated_sumps

missing contains [r.id, ["entry_routes", i, "sump", "only_surface_drain"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_boolean(r.sump.only_surface_drain)
}

missing contains [r.id, ["entry_routes", i, "sump", "alternative_drain"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_string(r.sump.alternative_drain)
}
