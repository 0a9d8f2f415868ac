# METADATA
# title: The pump in a pit under suction is submersible
# description: A pedestal motor stands above the lid, and its rod and cord leave holes that no lid seals well.
# custom:
#   subject: sump
#   grade: recommended
#   stage: running
#   remedy: Change the pump to a submersible one when it is next due.
#   caution: Unplug the pump and prove it dead before reaching into the pit.
#   limits:
#     pumps: {dimension: choice, sense: one-of}
package policy.sealing.sump_pump

import data.policy.routes
import rego.v2

pumps := data.profile.sealing.sump_pump.pumps.any_of

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "sump", "pump"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
}

exempt contains [r.id, "the system does not draw from this pit"] if {
	some r in input.entry_routes
	r.kind == "sump"
	r.sump.suction_here == false
}

exempt contains [r.id, "no pump stands in the pit"] if {
	some r in input.entry_routes
	r.kind == "sump"
	r.sump.pump == "none"
}

met contains r.id if {
	some r in input.entry_routes
	r.kind == "sump"
	r.sump.suction_here == true
	r.sump.pump in pumps
}

deficient contains [r.id, ["entry_routes", i, "sump", "pump"], "pumps"] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	r.sump.suction_here == true
	is_string(r.sump.pump)
	not r.sump.pump in pumps
}

missing contains [r.id, ["entry_routes", i, "sump", "suction_here"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_boolean(r.sump.suction_here)
}

missing contains [r.id, ["entry_routes", i, "sump", "pump"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_string(r.sump.pump)
}
