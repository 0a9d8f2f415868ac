# METADATA
# title: Drains that end in the soil are trapped, stopped or led elsewhere
# description: A condensate or utility drain that ends below the slab is an open pipe into the gas.
# custom:
#   subject: drain
#   grade: required
#   stage: running
#   remedy: Fit a deep trap or a one-way valve, or lead the drain to a trapped floor drain or a pump.
#   caution: Plumbing and refrigeration work is for licensed people.
#   limits:
#     kinds: {dimension: choice, sense: applies-to}
#     treatments: {dimension: choice, sense: one-of}
package policy.sealing.drains_to_soil

import data.policy.routes
import rego.v2

limits := data.profile.sealing.drains_to_soil

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.kind in limits.kinds.any_of
}

met contains r.id if {
	some r in input.entry_routes
	r.kind in limits.kinds.any_of
	r.treatment in limits.treatments.any_of
}

deficient contains [r.id, ["entry_routes", i, "treatment"], "treatments"] if {
	some i, r in input.entry_routes
	r.kind in limits.kinds.any_of
	is_string(r.treatment)
	not r.treatment in limits.treatments.any_of
}
