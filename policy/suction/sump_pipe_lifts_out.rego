# METADATA
# title: A pipe that draws from a sump comes out of the way of the pump
# description: Whoever has to cut the pipe to reach a dead pump does not put it back.
# custom:
#   subject: sump
#   grade: required
#   stage: running
#   remedy: Join the pipe over the lid with a coupling that comes apart.
package policy.suction.sump_pipe_lifts_out

import data.policy.routes
import rego.v2

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "sump", "pipe_lifts_out"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
}

exempt contains [r.id, "the system does not draw from it"] if {
	some r in input.entry_routes
	r.sump.suction_here == false
	r.kind == "sump"
}

exempt contains [r.id, "there is no pump in it"] if {
	some r in input.entry_routes
	r.kind == "sump"
	r.sump.pump == "none"
}

pumped contains r.id if {
	some r in input.entry_routes
	r.kind == "sump"
	r.sump.suction_here == true
	is_string(r.sump.pump)
	r.sump.pump != "none"
}

met contains r.id if {
	some r in input.entry_routes
	r.id in pumped
	r.sump.pipe_lifts_out == true
}

deficient contains [r.id, ["entry_routes", i, "sump", "pipe_lifts_out"]] if {
	some i, r in input.entry_routes
	r.id in pumped
	r.sump.pipe_lifts_out == false
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

missing contains [r.id, ["entry_routes", i, "sump", "pipe_lifts_out"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_boolean(r.sump.pipe_lifts_out)
}
