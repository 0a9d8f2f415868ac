# METADATA
# title: The end of the pipe cannot drop into pit, sump or membrane and plug itself
# description: A pipe that slips to the bottom of its pit draws on nothing, while the gauge still shows suction.
# custom:
#   subject: suction point
#   grade: required
#   stage: roughed-in
#   remedy: Clamp the pipe at the slab or lid so that its end stays clear of the bottom.
#   limits:
#     through: {dimension: choice, sense: applies-to}
package policy.suction.pipe_held_up

import data.policy.points
import rego.v2

limits := data.profile.suction.pipe_held_up

subjects contains gap if some gap in points.gaps

subjects contains [p.id, ["systems", i, "suction_points", j, "pipe_held_up"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
}

exempt contains outcome if some outcome in points.outside

exempt contains [p.id, "a pipe that enters this way cannot drop"] if {
	some s in input.systems
	some p in s.suction_points
	is_string(p.through)
	not p.through in limits.through.any_of
}

judged contains p.id if {
	some s in input.systems
	some p in s.suction_points
	p.id in points.judged
	p.through in limits.through.any_of
}

met contains p.id if {
	some s in input.systems
	some p in s.suction_points
	p.id in judged
	p.pipe_held_up == true
}

deficient contains [p.id, ["systems", i, "suction_points", j, "pipe_held_up"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	p.id in judged
	p.pipe_held_up == false
}

missing contains gap if some gap in points.unsaid

missing contains [p.id, ["systems", i, "suction_points", j, "through"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	not is_string(p.through)
}

missing contains [p.id, ["systems", i, "suction_points", j, "pipe_held_up"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	not is_boolean(p.pipe_held_up)
}
