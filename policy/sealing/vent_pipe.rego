# METADATA
# title: The gap round the vent pipe is sealed where it enters slab, wall or membrane
# description: At that gap the suction is highest, so a leak there costs the most reach.
# custom:
#   subject: suction point or penetration
#   grade: required
#   stage: running
#   remedy: Clean the gap and seal it airtight, then check it with smoke.
#   caution: Sealants and foams give off vapor; air the room and keep flames away.
#   limits:
#     places: {dimension: choice, sense: one-of}
package policy.sealing.vent_pipe

import data.policy.systems
import rego.v2

places := data.profile.sealing.vent_pipe.places.any_of

without contains id if some [id, _] in systems.without_outlet

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "suction_points"]] if {
	some i, s in input.systems
	not s.id in without
	not is_array(s.suction_points)
}

subjects contains [s.id, ["systems", i, "pipe"]] if {
	some i, s in input.systems
	not s.id in without
	not is_array(s.pipe)
}

subjects contains [p.id, ["systems", i, "suction_points", j, "sealed"]] if {
	some i, s in input.systems
	not s.id in without
	some j, p in s.suction_points
}

subjects contains [p.id, ["systems", i, "pipe", j, "penetrations"]] if {
	some i, s in input.systems
	not s.id in without
	some j, p in s.pipe
	not is_array(p.penetrations)
}

subjects contains [h.id, ["systems", i, "pipe", j, "penetrations", k, "sealed"]] if {
	some i, s in input.systems
	not s.id in without
	some j, p in s.pipe
	some k, h in p.penetrations
	h.through in places
}

subjects contains [h.id, ["systems", i, "pipe", j, "penetrations", k, "through"]] if {
	some i, s in input.systems
	not s.id in without
	some j, p in s.pipe
	some k, h in p.penetrations
	not is_string(h.through)
}

met contains p.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	some p in s.suction_points
	p.sealed == true
}

met contains h.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	some p in s.pipe
	some h in p.penetrations
	h.through in places
	h.sealed == true
}

deficient contains [p.id, ["systems", i, "suction_points", j, "sealed"]] if {
	some i, s in input.systems
	s.kind in systems.soil_kinds
	some j, p in s.suction_points
	p.sealed == false
}

deficient contains [h.id, ["systems", i, "pipe", j, "penetrations", k, "sealed"]] if {
	some i, s in input.systems
	s.kind in systems.soil_kinds
	some j, p in s.pipe
	some k, h in p.penetrations
	h.through in places
	h.sealed == false
}

missing contains [p.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
	some p in s.suction_points
}

missing contains [h.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
	some p in s.pipe
	some h in p.penetrations
	h.through in places
}
