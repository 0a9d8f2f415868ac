# METADATA
# title: A sealed perimeter channel still lets its water go
# description: Sealing the channel shut keeps out the gas and brings in the flood.
# custom:
#   subject: perimeter channel
#   grade: required
#   stage: running
#   remedy: Recess the seal below the floor so that water still runs along the channel, or lead it to a trapped drain.
#   caution: Sealants and foams give off vapor; air the room and keep flames away.
package policy.sealing.channel_drains

import data.policy.routes
import rego.v2

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "still_drains"]] if {
	some i, r in input.entry_routes
	r.kind == "perimeter-channel"
}

exempt contains [r.id, "the channel was not sealed"] if {
	some r in input.entry_routes
	r.kind == "perimeter-channel"
	is_string(r.treatment)
	not r.treatment in routes.shut
}

met contains r.id if {
	some r in input.entry_routes
	r.kind == "perimeter-channel"
	r.treatment in routes.shut
	r.still_drains == true
}

deficient contains [r.id, ["entry_routes", i, "still_drains"]] if {
	some i, r in input.entry_routes
	r.kind == "perimeter-channel"
	r.treatment in routes.shut
	r.still_drains == false
}

missing contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.kind == "perimeter-channel"
	not is_string(r.treatment)
}

missing contains [r.id, ["entry_routes", i, "still_drains"]] if {
	some i, r in input.entry_routes
	r.kind == "perimeter-channel"
	not is_boolean(r.still_drains)
}
