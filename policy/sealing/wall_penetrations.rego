# METADATA
# title: Gaps through a block or wood foundation wall below grade are sealed on both faces
# description: Behind a seal on one face the hollow wall still fills with soil gas.
# custom:
#   subject: pipe penetration
#   grade: required
#   stage: running
#   remedy: Seal the other face too, from outside if need be.
#   caution: Digging along a foundation needs shoring and a check for buried lines.
#   limits:
#     walls: {dimension: choice, sense: applies-to}
package policy.sealing.wall_penetrations

import data.policy.routes
import rego.v2

walls := data.profile.sealing.wall_penetrations.walls.any_of

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "both_faces_sealed"]] if {
	some i, r in input.entry_routes
	r.kind == "pipe-penetration"
}

exempt contains [r.id, "it does not pass a wall below grade"] if {
	some r in input.entry_routes
	r.kind == "pipe-penetration"
	is_string(r.part)
	r.part != "wall-below-grade"
}

exempt contains [r.id, "the wall is neither block nor wood"] if {
	some r in input.entry_routes
	r.kind == "pipe-penetration"
	some f in input.house.foundations
	f.id == r.foundation
	is_string(f.wall_kind)
	not f.wall_kind in walls
}

concerned contains r.id if {
	some r in input.entry_routes
	r.kind == "pipe-penetration"
	r.part == "wall-below-grade"
	some f in input.house.foundations
	f.id == r.foundation
	f.wall_kind in walls
}

met contains r.id if {
	some r in input.entry_routes
	r.id in concerned
	r.both_faces_sealed == true
}

deficient contains [r.id, ["entry_routes", i, "both_faces_sealed"]] if {
	some i, r in input.entry_routes
	r.id in concerned
	r.both_faces_sealed == false
}

missing contains [r.id, ["entry_routes", i, "part"]] if {
	some i, r in input.entry_routes
	r.kind == "pipe-penetration"
	not is_string(r.part)
}

missing contains [r.id, ["entry_routes", i, "foundation"]] if {
	some i, r in input.entry_routes
	r.kind == "pipe-penetration"
	not is_string(r.foundation)
}

missing contains [r.id, ["house", "foundations"]] if {
	some r in input.entry_routes
	r.kind == "pipe-penetration"
	not is_array(input.house.foundations)
}

missing contains [r.id, ["house", "foundations", i, "wall_kind"]] if {
	some r in input.entry_routes
	r.kind == "pipe-penetration"
	some i, f in input.house.foundations
	f.id == r.foundation
	not is_string(f.wall_kind)
}

missing contains [r.id, ["entry_routes", i, "both_faces_sealed"]] if {
	some i, r in input.entry_routes
	r.kind == "pipe-penetration"
	not is_boolean(r.both_faces_sealed)
}
