# METADATA
# title: The fan of a chemical vapor system pulls hard enough at each suction point
# description: Chemical vapor gets in through gaps that a weak pull does not reach.
# custom:
#   subject: suction point
#   grade: hazard
#   stage: running
#   remedy: Read the static suction at the pit with the fan on; seal leaks, add suction points or fit a stronger fan until it is reached.
#   caution: Test every fuel-burning appliance again after raising the suction.
#   limits:
#     minimum: {dimension: pressure, sense: at-least}
#     kinds: {dimension: choice, sense: applies-to}
#     contaminants: {dimension: choice, sense: applies-to}
package policy.fan.vapor_suction

import rego.v2

limits := data.profile.fan.vapor_suction

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "suction_points"]] if {
	some i, s in input.systems
	not is_array(s.suction_points)
}

subjects contains [p.id, ["systems", i, "suction_points", j, "suction"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
}

exempt contains [id, "the job is not about chemical vapor"] if {
	some [id, _] in subjects
	is_string(input.job.contaminant)
	not input.job.contaminant in limits.contaminants.any_of
}

outside contains [s.id, "no fan drives this system"] if {
	some s in input.systems
	is_string(s.powered_by)
	s.powered_by != "fan"
}

outside contains [s.id, "its source does not speak of this kind of system"] if {
	some s in input.systems
	is_string(s.kind)
	not s.kind in limits.kinds.any_of
}

exempt contains [s.id, reason] if {
	some s in input.systems
	not is_array(s.suction_points)
	some [id, reason] in outside
	id == s.id
}

exempt contains [p.id, reason] if {
	some s in input.systems
	some p in s.suction_points
	some [id, reason] in outside
	id == s.id
}

judged contains p.id if {
	input.job.contaminant in limits.contaminants.any_of
	some s in input.systems
	s.powered_by == "fan"
	s.kind in limits.kinds.any_of
	some p in s.suction_points
}

met contains p.id if {
	some s in input.systems
	some p in s.suction_points
	p.id in judged
	p.suction.si >= limits.minimum.si
}

deficient contains [p.id, ["systems", i, "suction_points", j, "suction"], "minimum"] if {
	some i, s in input.systems
	some j, p in s.suction_points
	p.id in judged
	p.suction.si < limits.minimum.si
}

missing contains [id, ["job", "contaminant"]] if {
	some [id, _] in subjects
	not is_string(input.job.contaminant)
}

missing contains [p.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	some p in s.suction_points
	not is_string(s.kind)
}

missing contains [p.id, ["systems", i, "powered_by"]] if {
	some i, s in input.systems
	some p in s.suction_points
	not is_string(s.powered_by)
}

missing contains [p.id, ["systems", i, "suction_points", j, "suction"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	not is_number(p.suction.si)
}
