# METADATA
# title: Where the pipe goes through hollow block, the opened cores are filled
# description: Left open, the fan draws air out of the wall instead of soil gas from below the slab.
# custom:
#   subject: suction point
#   grade: required
#   stage: running
#   remedy: Fill the cores round the pipe with mortar or foam, then seal the face of the block.
#   caution: Drilling concrete and block raises silica dust; use a shroud with dust collector or water.
#   limits:
#     walls: {dimension: choice, sense: applies-to}
package policy.suction.block_cores_sealed

import data.policy.points
import rego.v2

limits := data.profile.suction.block_cores_sealed

subjects contains gap if some gap in points.gaps

subjects contains [p.id, ["systems", i, "suction_points", j, "block_cores_sealed"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
}

exempt contains outcome if some outcome in points.outside

exempt contains [p.id, "it does not go through a wall"] if {
	some s in input.systems
	some p in s.suction_points
	is_string(p.through)
	not p.through in limits.walls.any_of
}

exempt contains [p.id, "the wall is not of hollow block"] if {
	some s in input.systems
	some p in s.suction_points
	p.wall_is_hollow_block == false
}

exempt contains [p.id, "the system draws from the hollow wall itself"] if {
	some s in input.systems
	some p in s.suction_points
	s.kind == "block-wall"
}

judged contains p.id if {
	some s in input.systems
	some p in s.suction_points
	p.id in points.judged
	s.kind != "block-wall"
	p.through in limits.walls.any_of
	p.wall_is_hollow_block == true
}

met contains p.id if {
	some s in input.systems
	some p in s.suction_points
	p.id in judged
	p.block_cores_sealed == true
}

deficient contains [p.id, ["systems", i, "suction_points", j, "block_cores_sealed"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	p.id in judged
	p.block_cores_sealed == false
}

missing contains gap if some gap in points.unsaid

missing contains [p.id, ["systems", i, "suction_points", j, "through"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	not is_string(p.through)
}

missing contains [p.id, ["systems", i, "suction_points", j, "wall_is_hollow_block"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	not is_boolean(p.wall_is_hollow_block)
}

missing contains [p.id, ["systems", i, "suction_points", j, "block_cores_sealed"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	not is_boolean(p.block_cores_sealed)
}
