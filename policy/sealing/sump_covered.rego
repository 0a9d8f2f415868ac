# METADATA
# title: A sump pit open to the soil is covered and sealed
# description: An open pit is the largest hole in the floor, and soil gas comes up through it around the clock.
# custom:
#   subject: sump
#   grade: required
#   stage: running
#   remedy: Cover the pit with a rigid, sealed lid that comes off for service, and pipe the vent through it where the system draws from the pit.
#   caution: Unplug the pump and prove it dead before reaching into the pit.
#   limits:
#     treatments: {dimension: choice, sense: one-of}
package policy.sealing.sump_covered

import data.policy.routes
import rego.v2

treatments := data.profile.sealing.sump_covered.treatments.any_of

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
}

exempt contains [r.id, "the pit neither lets soil gas in nor house air into the system"] if {
	some r in input.entry_routes
	r.kind == "sump"
	r.sump.open_to_soil == false
	is_string(r.treatment)
	not r.treatment in treatments
}

met contains r.id if {
	some r in input.entry_routes
	r.kind == "sump"
	r.sump.open_to_soil == false
	r.treatment in treatments
}

deficient contains [r.id, ["entry_routes", i, "treatment"], "treatments"] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	r.sump.open_to_soil == true
	is_string(r.treatment)
	not r.treatment in treatments
}

deficient contains [r.id, ["entry_routes", i, "sump", "open_to_soil"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	r.sump.open_to_soil == true
	r.treatment in treatments
}

missing contains gap if some gap in routes.untreated_sumps

missing contains [r.id, ["entry_routes", i, "sump", "open_to_soil"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_boolean(r.sump.open_to_soil)
}
