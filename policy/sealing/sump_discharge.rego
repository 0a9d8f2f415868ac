# METADATA
# title: The discharge of a sump pump is rigid pipe, or rigid pipe was advised in writing
# description: Flexible hose kinks and slips off, and a sealed pit floods where nobody sees it.
# custom:
#   subject: sump
#   grade: required
#   stage: closeout
#   remedy: Change the discharge to rigid pipe, or advise it to the client in writing.
#   caution: Unplug the pump and prove it dead before reaching into the pit.
package policy.sealing.sump_discharge

import data.policy.routes
import rego.v2

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "sump", "discharge_pipe"]] if {
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
	r.sump.discharge_pipe == "rigid"
}

met contains r.id if {
	some r in input.entry_routes
	r.id in pumped
	r.sump.discharge_pipe == "flexible"
	r.sump.rigid_pipe_advised == true
}

deficient contains [r.id, ["entry_routes", i, "sump", "rigid_pipe_advised"]] if {
	some i, r in input.entry_routes
	r.id in pumped
	r.sump.discharge_pipe == "flexible"
	r.sump.rigid_pipe_advised == false
}

missing contains [r.id, ["entry_routes", i, "sump", "pump"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_string(r.sump.pump)
}

missing contains [r.id, ["entry_routes", i, "sump", "discharge_pipe"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_string(r.sump.discharge_pipe)
}

missing contains [r.id, ["entry_routes", i, "sump", "rigid_pipe_advised"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	r.sump.discharge_pipe == "flexible"
	not is_boolean(r.sump.rigid_pipe_advised)
}
