# METADATA
# title: The pit of a chemical vapor system is as large and as deep as the program asks
# description: Chemical vapor is weaker drawn through a small pit, and the far rooms keep it.
# custom:
#   subject: suction point
#   grade: required
#   stage: roughed-in
#   remedy: Take out more soil through the hole.
#   caution: Soil from such a pit can be hazardous; wear the gear that the site plan names.
#   limits:
#     volume: {dimension: volume, sense: at-least}
#     depth: {dimension: length, sense: at-least}
#     through: {dimension: choice, sense: applies-to}
#     kinds: {dimension: choice, sense: applies-to}
#     contaminants: {dimension: choice, sense: applies-to}
package policy.suction.vapor_pit

import data.policy.points
import rego.v2

limits := data.profile.suction.vapor_pit

subjects contains gap if some gap in points.gaps

subjects contains [p.id, ["systems", i, "suction_points", j, "pit_volume"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
}

exempt contains outcome if some outcome in points.outside

exempt contains [p.id, "the job is not about chemical vapor"] if {
	some s in input.systems
	some p in s.suction_points
	is_string(input.job.contaminant)
	not input.job.contaminant in limits.contaminants.any_of
}

exempt contains [p.id, "its source does not speak of this kind of system"] if {
	some s in input.systems
	some p in s.suction_points
	is_string(s.kind)
	not s.kind in limits.kinds.any_of
}

exempt contains [p.id, "there is no pit where the pipe enters this way"] if {
	some s in input.systems
	some p in s.suction_points
	is_string(p.through)
	not p.through in limits.through.any_of
}

judged contains p.id if {
	some s in input.systems
	some p in s.suction_points
	p.id in points.judged
	input.job.contaminant in limits.contaminants.any_of
	s.kind in limits.kinds.any_of
	p.through in limits.through.any_of
}

met contains p.id if {
	some s in input.systems
	some p in s.suction_points
	p.id in judged
	p.pit_volume.si >= limits.volume.si
	p.pit_depth.si >= limits.depth.si
}

deficient contains [p.id, ["systems", i, "suction_points", j, "pit_volume"], "volume"] if {
	some i, s in input.systems
	some j, p in s.suction_points
	p.id in judged
	p.pit_volume.si < limits.volume.si
}

deficient contains [p.id, ["systems", i, "suction_points", j, "pit_depth"], "depth"] if {
	some i, s in input.systems
	some j, p in s.suction_points
	p.id in judged
	p.pit_depth.si < limits.depth.si
}

missing contains gap if some gap in points.unsaid

missing contains [p.id, ["job", "contaminant"]] if {
	some s in input.systems
	some p in s.suction_points
	not is_string(input.job.contaminant)
}

missing contains [p.id, ["systems", i, "suction_points", j, "through"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	not is_string(p.through)
}

missing contains [p.id, ["systems", i, "suction_points", j, "pit_volume"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	not is_number(p.pit_volume.si)
}

missing contains [p.id, ["systems", i, "suction_points", j, "pit_depth"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	not is_number(p.pit_depth.si)
}
