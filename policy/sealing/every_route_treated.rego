# METADATA
# title: Nothing that lets soil gas in was left open
# description: Each open hole lets gas in, and wastes the suction that should keep it out elsewhere.
# custom:
#   subject: entry route
#   grade: recommended
#   stage: running
#   remedy: Seal, trap or lead away the opening, or record that it cannot be reached.
#   caution: Sealants and foams give off vapor; air the room and keep flames away.
#   limits:
#     treatments: {dimension: choice, sense: one-of}
package policy.sealing.every_route_treated

import rego.v2

treatments := data.profile.sealing.every_route_treated.treatments.any_of

subjects contains ["entry_routes", ["entry_routes"]] if not is_array(input.entry_routes)

subjects contains [r.id, ["entry_routes", i, "treatment"]] if some i, r in input.entry_routes

met contains r.id if {
	some r in input.entry_routes
	r.treatment in treatments
}

deficient contains [r.id, ["entry_routes", i, "treatment"], "treatments"] if {
	some i, r in input.entry_routes
	is_string(r.treatment)
	not r.treatment in treatments
}
