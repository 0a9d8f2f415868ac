# METADATA
# title: The suction in a pit is no more than the fan can give
# description: A number that cannot be tells nobody whether soil gas is held under the floor.
# custom:
#   subject: suction point
#   grade: required
#   stage: running
#   remedy: Measure again with the meter zeroed; check the unit and the fan's data sheet.
#   limits:
#     maximum: {dimension: ratio, sense: at-most}
package policy.physics.pit_below_shutoff

import data.policy.airways
import data.policy.points
import data.policy.systems
import rego.v2

limits := data.profile.physics.pit_below_shutoff

subjects contains gap if some gap in points.gaps

subjects contains [p.id, ["systems", i, "suction_points", j, "suction"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
}

exempt contains outcome if some outcome in points.outside

exempt contains [p.id, "no fan drives this system"] if {
	some s in input.systems
	is_string(s.powered_by)
	s.powered_by != "fan"
	some p in s.suction_points
}

driven contains p.id if {
	some s in input.systems
	s.id in systems.with_fan
	some p in s.suction_points
}

missing contains gap if some gap in points.unsaid

missing contains [p.id, ["systems", i, "powered_by"]] if {
	some i, s in input.systems
	some p in s.suction_points
	not is_string(s.powered_by)
}

met contains d.id if {
	some d in input.derived.suction_points
	d.id in driven
	airways.sited
	d.shutoff_share.si <= limits.maximum.si
}

deficient contains [d.id, ["derived", "suction_points", i, "shutoff_share"], "maximum"] if {
	some i, d in input.derived.suction_points
	d.id in driven
	d.shutoff_share.si > limits.maximum.si
}

undetermined contains [d.id, ["derived", "suction_points", i, "shutoff_share"], "suction in the pit and fan curve are not both recorded"] if {
	some i, d in input.derived.suction_points
	d.id in driven
	not is_number(d.shutoff_share.si)
}

undetermined contains [d.id, ["derived", "suction_points", i, "shutoff_share"], "the altitude is not recorded, and thin air lowers what the fan gives"] if {
	some i, d in input.derived.suction_points
	d.id in driven
	not airways.sited
}
