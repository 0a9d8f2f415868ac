# METADATA
# title: The client knows which openings could not be reached, from the papers too
# description: Whoever opens the wall one day should know that a hole waits behind it.
# custom:
#   subject: entry route
#   grade: required
#   stage: closeout
#   remedy: Tell the client which openings stay open and list them in the papers that stay with the house.
package policy.sealing.unreachable_told

import rego.v2

subjects contains ["entry_routes", ["entry_routes"]] if not is_array(input.entry_routes)

subjects contains [r.id, ["entry_routes", i, "client_told"]] if {
	some i, r in input.entry_routes
	r.treatment == "not-reachable"
}

subjects contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	not is_string(r.treatment)
}

met contains r.id if {
	some r in input.entry_routes
	r.treatment == "not-reachable"
	r.client_told == true
	input.closeout.package.unsealed_openings == true
}

deficient contains [r.id, ["entry_routes", i, "client_told"]] if {
	some i, r in input.entry_routes
	r.treatment == "not-reachable"
	r.client_told == false
}

deficient contains [r.id, ["closeout", "package", "unsealed_openings"]] if {
	some r in input.entry_routes
	r.treatment == "not-reachable"
	input.closeout.package.unsealed_openings == false
}

missing contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	not is_string(r.treatment)
}

missing contains [r.id, ["entry_routes", i, "client_told"]] if {
	some i, r in input.entry_routes
	r.treatment == "not-reachable"
	not is_boolean(r.client_told)
}

missing contains [r.id, ["closeout", "package", "unsealed_openings"]] if {
	some r in input.entry_routes
	r.treatment == "not-reachable"
	not is_boolean(input.closeout.package.unsealed_openings)
}
