package policy.suction.block_cores_sealed_test

import data.policy.lib
import data.policy.suction.block_cores_sealed as rule
import rego.v2

# Common practice (no source): a pipe through hollow block below grade, from
# inside or outside, has the opened cores filled round it.
profile := {"suction": {"block_cores_sealed": {"walls": {"any_of": ["wall-from-outside", "wall-from-inside"]}}}}

point(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab",
	"suction_points": [object.union({"id": "p"}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

block(fields) := point(object.union({"through": "wall-from-outside", "wall_is_hollow_block": true}, fields))

test_met if verdict(block({"block_cores_sealed": true})) == "met"

test_deficient if verdict(block({"block_cores_sealed": false})) == "deficient"

test_deficient_from_inside if {
	verdict(point({"through": "wall-from-inside", "wall_is_hollow_block": true, "block_cores_sealed": false})) == "deficient"
}

test_unrecorded_in_block if verdict(block({})) == "unrecorded"

test_not_applicable_in_poured_walls if verdict(point({"through": "wall-from-inside", "wall_is_hollow_block": false})) == "not-applicable"

test_not_applicable_in_the_slab if verdict(point({"through": "slab"})) == "not-applicable"

test_not_applicable_where_the_wall_is_drawn_on if {
	verdict({"systems": [{"id": "s", "kind": "block-wall", "suction_points": [{"id": "p", "through": "wall-from-inside", "wall_is_hollow_block": true}]}]}) == "not-applicable"
}

test_unrecorded if verdict(point({})) == "unrecorded"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab"}]} with data.profile as profile
}

test_not_applicable_to_pressurization if {
	verdict({"systems": [{"id": "s", "kind": "pressurization", "suction_points": [{"id": "p"}]}]}) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "suction_points": [{"id": "p"}]}]} with data.profile as profile
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "suction_points", 0, "through"]],
		["p", ["systems", 0, "suction_points", 0, "wall_is_hollow_block"]],
		["p", ["systems", 0, "suction_points", 0, "block_cores_sealed"]],
	}
}
