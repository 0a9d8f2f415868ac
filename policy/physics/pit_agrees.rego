# METADATA
# title: The suction measured in a pit agrees with the gauge
# description: When pit and gauge tell two stories, a leak or a blockage lies between them.
# custom:
#   subject: suction point
#   grade: required
#   stage: running
#   remedy: Measure both again; look for a leak, a blockage or a damper between the pit and the gauge.
#   limits:
#     lowest: {dimension: ratio, sense: at-least}
#     highest: {dimension: ratio, sense: at-most}
package policy.physics.pit_agrees

import data.policy.airways
import data.policy.points
import data.policy.systems
import rego.v2

limits := data.profile.physics.pit_agrees

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

compared contains p.id if {
	some s in input.systems
	s.id in airways.proven
	some p in s.suction_points
	p.id in driven
}

met contains d.id if {
	some d in input.derived.suction_points
	d.id in compared
	d.suction_difference.si >= limits.lowest.si
	d.suction_difference.si <= limits.highest.si
}

deficient contains [d.id, ["derived", "suction_points", i, "suction_difference"], "lowest"] if {
	some i, d in input.derived.suction_points
	d.id in compared
	d.suction_difference.si < limits.lowest.si
}

deficient contains [d.id, ["derived", "suction_points", i, "suction_difference"], "highest"] if {
	some i, d in input.derived.suction_points
	d.id in compared
	d.suction_difference.si > limits.highest.si
}

undetermined contains [d.id, ["derived", "suction_points", i, "suction_difference"], "no suction in the pit was measured, or none follows from the gauge"] if {
	some i, d in input.derived.suction_points
	d.id in driven
	not is_number(d.suction_difference.si)
}

undetermined contains [d.id, ["derived", "suction_points", i, "suction_difference"], "measured flow, altitude and the end of the pipe are not all recorded"] if {
	some i, d in input.derived.suction_points
	d.id in driven
	not d.id in compared
}
