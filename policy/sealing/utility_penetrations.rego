# METADATA
# title: Gaps round pipes and wires through slab and wall are sealed airtight
# description: A sleeve wider than its pipe is a chimney out of the ground.
# custom:
#   subject: pipe penetration
#   grade: required
#   stage: running
#   remedy: Clean the gap and seal it, then check with smoke.
#   caution: Sealants and foams give off vapor; air the room and keep flames away.
package policy.sealing.utility_penetrations

import data.policy.routes
import rego.v2

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "admits_soil_gas"]] if {
	some i, r in input.entry_routes
	r.kind == "pipe-penetration"
}

exempt contains [r.id, "it cannot be reached"] if {
	some r in input.entry_routes
	r.kind == "pipe-penetration"
	r.treatment == "not-reachable"
}

met contains r.id if {
	some r in input.entry_routes
	r.kind == "pipe-penetration"
	r.treatment in routes.shut
	r.admits_soil_gas == false
}

deficient contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.kind == "pipe-penetration"
	is_string(r.treatment)
	not r.treatment in routes.shut
}

deficient contains [r.id, ["entry_routes", i, "admits_soil_gas"]] if {
	some i, r in input.entry_routes
	r.kind == "pipe-penetration"
	r.treatment in routes.shut
	r.admits_soil_gas == true
}

missing contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.kind == "pipe-penetration"
	not is_string(r.treatment)
}

missing contains [r.id, ["entry_routes", i, "admits_soil_gas"]] if {
	some i, r in input.entry_routes
	r.kind == "pipe-penetration"
	not is_boolean(r.admits_soil_gas)
}
