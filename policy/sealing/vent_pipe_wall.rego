# METADATA
# title: Vent pipe through a block or wood foundation wall below grade is sealed on both faces
# description: Behind a seal on one face the fan draws through the wall in place of the ground.
# custom:
#   subject: penetration
#   grade: required
#   stage: running
#   remedy: Seal the other face too, from outside if need be.
#   caution: Digging along a foundation needs shoring and a check for buried lines.
package policy.sealing.vent_pipe_wall

import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "pipe"]] if {
	some i, s in input.systems
	not is_array(s.pipe)
}

subjects contains [p.id, ["systems", i, "pipe", j, "penetrations"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_array(p.penetrations)
}

subjects contains [h.id, ["systems", i, "pipe", j, "penetrations", k, "both_faces_sealed"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, h in p.penetrations
	h.through == "foundation-wall"
}

subjects contains [h.id, ["systems", i, "pipe", j, "penetrations", k, "through"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, h in p.penetrations
	not is_string(h.through)
}

exempt contains [h.id, "it does not lie below grade"] if {
	some s in input.systems
	some p in s.pipe
	some h in p.penetrations
	h.through == "foundation-wall"
	h.below_grade == false
}

met contains h.id if {
	some s in input.systems
	some p in s.pipe
	some h in p.penetrations
	h.through == "foundation-wall"
	h.below_grade == true
	h.both_faces_sealed == true
}

deficient contains [h.id, ["systems", i, "pipe", j, "penetrations", k, "both_faces_sealed"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, h in p.penetrations
	h.through == "foundation-wall"
	h.below_grade == true
	h.both_faces_sealed == false
	h.wall_is_hollow_block == true
}

undetermined contains [h.id, ["systems", i, "pipe", j, "penetrations", k, "both_faces_sealed"], "nothing says whether the wall is solid block or wood"] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, h in p.penetrations
	h.through == "foundation-wall"
	h.below_grade == true
	h.both_faces_sealed == false
	h.wall_is_hollow_block == false
}

missing contains [h.id, ["systems", i, "pipe", j, "penetrations", k, "below_grade"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, h in p.penetrations
	h.through == "foundation-wall"
	not is_boolean(h.below_grade)
}

missing contains [h.id, ["systems", i, "pipe", j, "penetrations", k, "both_faces_sealed"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, h in p.penetrations
	h.through == "foundation-wall"
	not is_boolean(h.both_faces_sealed)
}

missing contains [h.id, ["systems", i, "pipe", j, "penetrations", k, "wall_is_hollow_block"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, h in p.penetrations
	h.through == "foundation-wall"
	not is_boolean(h.wall_is_hollow_block)
}
