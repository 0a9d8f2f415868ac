# METADATA
# title: Traps in drains to the soil hold a deep water seal
# description: The fan lifts water, and what it does not lift dries out over a summer.
# custom:
#   subject: trap
#   grade: required
#   stage: running
#   remedy: Fit a trap with a deeper seal, or one that fills itself.
#   caution: Plumbing work is for licensed people.
#   limits:
#     kinds: {dimension: choice, sense: applies-to}
#     minimum: {dimension: length, sense: at-least}
package policy.sealing.trap_seal

import data.policy.routes
import rego.v2

limits := data.profile.sealing.trap_seal

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "trap_seal"]] if {
	some i, r in input.entry_routes
	r.kind in limits.kinds.any_of
}

exempt contains [r.id, "no trap keeps the gas out here"] if {
	some r in input.entry_routes
	r.kind in limits.kinds.any_of
	is_string(r.treatment)
	r.treatment != "trapped"
}

met contains r.id if {
	some r in input.entry_routes
	r.kind in limits.kinds.any_of
	r.treatment == "trapped"
	r.trap_seal.si >= limits.minimum.si
}

deficient contains [r.id, ["entry_routes", i, "trap_seal"], "minimum"] if {
	some i, r in input.entry_routes
	r.kind in limits.kinds.any_of
	r.treatment == "trapped"
	r.trap_seal.si < limits.minimum.si
}

missing contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.kind in limits.kinds.any_of
	not is_string(r.treatment)
}

missing contains [r.id, ["entry_routes", i, "trap_seal"]] if {
	some i, r in input.entry_routes
	r.kind in limits.kinds.any_of
	not is_number(r.trap_seal.si)
}
