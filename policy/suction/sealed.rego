# METADATA
# title: The gap round the pipe is sealed airtight with something that lasts
# description: The fan takes house air through that gap before it takes any from the soil.
# custom:
#   subject: suction point
#   grade: required
#   stage: running
#   remedy: Clean the gap and seal it with caulk, grout or a gasket; then check with smoke.
#   caution: Sealants give off vapor; air the room and keep flames away.
#   limits:
#     lasting: {dimension: choice, sense: one-of}
package policy.suction.sealed

import data.policy.points
import rego.v2

limits := data.profile.suction.sealed

subjects contains gap if some gap in points.gaps

subjects contains [p.id, ["systems", i, "suction_points", j, "sealed"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
}

exempt contains outcome if some outcome in points.outside

met contains p.id if {
	some s in input.systems
	some p in s.suction_points
	p.id in points.judged
	p.sealed == true
	p.seal_material in limits.lasting.any_of
}

deficient contains [p.id, ["systems", i, "suction_points", j, "sealed"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	p.id in points.judged
	p.sealed == false
}

deficient contains [p.id, ["systems", i, "suction_points", j, "seal_material"], "lasting"] if {
	some i, s in input.systems
	some j, p in s.suction_points
	p.id in points.judged
	is_string(p.seal_material)
	not p.seal_material in limits.lasting.any_of
}

missing contains gap if some gap in points.unsaid

missing contains [p.id, ["systems", i, "suction_points", j, "sealed"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	not is_boolean(p.sealed)
}

missing contains [p.id, ["systems", i, "suction_points", j, "seal_material"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	not is_string(p.seal_material)
}
