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
#     not_for: {dimension: choice, sense: one-of}
package policy.sealing.sump_covered

import data.policy.houses
import data.policy.routes
import rego.v2

limits := data.profile.sealing.sump_covered

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
}

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(limits.not_for.any_of)
}

exempt contains [r.id, "the pit neither lets soil gas in nor house air into the system"] if {
	some r in input.entry_routes
	r.kind == "sump"
	r.sump.open_to_soil == false
	is_string(r.treatment)
	not r.treatment in limits.treatments.any_of
}

met contains r.id if {
	some r in input.entry_routes
	r.kind == "sump"
	houses.meant(limits.not_for.any_of)
	r.sump.open_to_soil == false
	r.treatment in limits.treatments.any_of
}

deficient contains [r.id, ["entry_routes", i, "treatment"], "treatments"] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	houses.meant(limits.not_for.any_of)
	r.sump.open_to_soil == true
	is_string(r.treatment)
	not r.treatment in limits.treatments.any_of
}

deficient contains [r.id, ["entry_routes", i, "sump", "open_to_soil"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	houses.meant(limits.not_for.any_of)
	r.sump.open_to_soil == true
	r.treatment in limits.treatments.any_of
}

missing contains gap if some gap in routes.unlisted

missing contains gap if some gap in routes.untreated_sumps

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(limits.not_for.any_of)
}

missing contains [r.id, ["entry_routes", i, "sump", "open_to_soil"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_boolean(r.sump.open_to_soil)
}
