# METADATA
# title: The discharge of a sump pump has a check valve
# description: Without it water runs back and the fan pulls outdoor air through the empty pipe.
# custom:
#   subject: sump
#   grade: required
#   stage: running
#   remedy: Fit a check valve in the discharge of the pump.
#   caution: Unplug the pump and prove it dead before reaching into the pit.
package policy.sealing.sump_check_valve

import data.policy.routes
import rego.v2

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "sump", "check_valve"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
}

exempt contains [r.id, "no pump stands in the pit"] if {
	some r in input.entry_routes
	r.kind == "sump"
	r.sump.pump == "none"
}

pumped contains r.id if {
	some r in input.entry_routes
	r.kind == "sump"
	is_string(r.sump.pump)
	r.sump.pump != "none"
}

met contains r.id if {
	some r in input.entry_routes
	r.id in pumped
	r.sump.check_valve == true
}

deficient contains [r.id, ["entry_routes", i, "sump", "check_valve"]] if {
	some i, r in input.entry_routes
	r.id in pumped
	r.sump.check_valve == false
}

missing contains [r.id, ["entry_routes", i, "sump", "pump"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_string(r.sump.pump)
}

missing contains [r.id, ["entry_routes", i, "sump", "check_valve"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_boolean(r.sump.check_valve)
}
