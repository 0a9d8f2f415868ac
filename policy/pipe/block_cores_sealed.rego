# METADATA
# title: Where the pipe passes a wall of hollow block, the opened cores are filled
# description: Left open, the cores let soil gas out round the pipe, and the fan draws air down the wall instead of from the soil.
# custom:
#   subject: penetration
#   grade: required
#   stage: running
#   remedy: Fill the cores round the pipe with mortar or foam, then seal the face of the block.
#   caution: Drilling block raises silica dust; use a shroud with dust collector or water.
#   limits:
#     walls: {dimension: choice, sense: applies-to}
package policy.pipe.block_cores_sealed

import data.policy.penetrations
import rego.v2

limits := data.profile.pipe.block_cores_sealed

subjects contains gap if some gap in penetrations.gaps

subjects contains [n.id, ["systems", i, "pipe", j, "penetrations", k, "block_cores_sealed"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
}

exempt contains outcome if some outcome in penetrations.outside

exempt contains [n.id, "the wall is not of hollow block"] if {
	some s in input.systems
	some p in s.pipe
	some n in p.penetrations
	n.wall_is_hollow_block == false
}

exempt contains [n.id, "it passes no wall"] if {
	some s in input.systems
	some p in s.pipe
	some n in p.penetrations
	is_string(n.through)
	not n.through in limits.walls.any_of
}

exempt contains [n.id, "the system draws from the hollow wall itself"] if {
	some s in input.systems
	some p in s.pipe
	some n in p.penetrations
	s.kind == "block-wall"
}

judged contains n.id if {
	some s in input.systems
	some p in s.pipe
	some n in p.penetrations
	n.id in penetrations.judged
	s.kind != "block-wall"
	n.through in limits.walls.any_of
	n.wall_is_hollow_block == true
}

met contains n.id if {
	some s in input.systems
	some p in s.pipe
	some n in p.penetrations
	n.id in judged
	n.block_cores_sealed == true
}

deficient contains [n.id, ["systems", i, "pipe", j, "penetrations", k, "block_cores_sealed"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
	n.id in judged
	n.block_cores_sealed == false
}

missing contains gap if some gap in penetrations.unsaid

missing contains [n.id, ["systems", i, "pipe", j, "penetrations", k, "through"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
	not is_string(n.through)
}

missing contains [n.id, ["systems", i, "pipe", j, "penetrations", k, "wall_is_hollow_block"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
	not is_boolean(n.wall_is_hollow_block)
}

missing contains [n.id, ["systems", i, "pipe", j, "penetrations", k, "block_cores_sealed"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
	not is_boolean(n.block_cores_sealed)
}
