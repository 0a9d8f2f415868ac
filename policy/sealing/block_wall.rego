# METADATA
# title: Block walls under suction are closed at the top and at every opening in reach
# description: An open core or an outlet box in the wall lets room air in, and the fan empties the house in place of the wall.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Close the tops and every opening of the wall that can be reached.
#   caution: Suction on walls or crawlspace can pull flue gas back into the house; test fuel-burning appliances with the system on.
#   limits:
#     tops: {dimension: choice, sense: one-of}
package policy.sealing.block_wall

import rego.v2

tops := data.profile.sealing.block_wall.tops.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "foundations"]] if some i, s in input.systems

exempt contains [s.id, "this kind of system does not draw on block walls"] if {
	some s in input.systems
	is_string(s.kind)
	s.kind != "block-wall"
}

closed contains [s.id, f.id] if {
	some s in input.systems
	some f in input.house.foundations
	f.id in s.foundations
	f.block_tops in tops
	f.wall_openings_closed == true
}

met contains s.id if {
	some s in input.systems
	s.kind == "block-wall"
	count(s.foundations) > 0
	count([1 | some [id, _] in closed; id == s.id]) == count(s.foundations)
}

deficient contains [s.id, ["house", "foundations", i, "block_tops"], "tops"] if {
	some s in input.systems
	s.kind == "block-wall"
	some i, f in input.house.foundations
	f.id in s.foundations
	is_string(f.block_tops)
	not f.block_tops in tops
}

deficient contains [s.id, ["house", "foundations", i, "wall_openings_closed"]] if {
	some s in input.systems
	s.kind == "block-wall"
	some i, f in input.house.foundations
	f.id in s.foundations
	f.wall_openings_closed == false
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "foundations"]] if {
	some i, s in input.systems
	not is_array(s.foundations)
}

missing contains [s.id, ["house", "foundations", i, "block_tops"]] if {
	some s in input.systems
	some i, f in input.house.foundations
	f.id in s.foundations
	not is_string(f.block_tops)
}

missing contains [s.id, ["house", "foundations", i, "wall_openings_closed"]] if {
	some s in input.systems
	some i, f in input.house.foundations
	f.id in s.foundations
	not is_boolean(f.wall_openings_closed)
}
