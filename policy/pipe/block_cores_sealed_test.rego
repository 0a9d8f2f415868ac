package policy.pipe.block_cores_sealed_test

import data.policy.lib
import data.policy.pipe.block_cores_sealed as rule
import rego.v2

# Common practice (no source): the cores that the hole opens are filled, so that
# the fan draws from the soil and not from the wall.
profile := {"pipe": {"block_cores_sealed": {"walls": {"any_of": ["foundation-wall", "exterior-wall", "garage-separation"]}}}}

segment(holes) := {"systems": [{
	"id": "s", "kind": "sub-slab",
	"pipe": [object.union({"id": "p"}, holes)],
}]}

hole(fields) := segment({"penetrations": [object.union({"id": "n"}, fields)]})

verdict(job) := v if v := lib.verdict(rule, "n") with input as job with data.profile as profile

block(fields) := hole(object.union({"through": "foundation-wall", "wall_is_hollow_block": true}, fields))

test_met if verdict(block({"block_cores_sealed": true})) == "met"

test_deficient if verdict(block({"block_cores_sealed": false})) == "deficient"

test_unrecorded_in_block if verdict(block({})) == "unrecorded"

test_not_applicable_in_poured_walls if verdict(hole({"through": "foundation-wall", "wall_is_hollow_block": false})) == "not-applicable"

test_not_applicable_in_floors if verdict(hole({"through": "floor"})) == "not-applicable"

test_not_applicable_where_the_wall_is_drawn_on if {
	verdict({"systems": [{"id": "s", "kind": "block-wall", "pipe": [{"id": "p", "penetrations": [{"id": "n", "through": "foundation-wall", "wall_is_hollow_block": true}]}]}]}) == "not-applicable"
}

test_unrecorded if verdict(hole({})) == "unrecorded"

test_unrecorded_without_a_list_of_holes if {
	"unrecorded" == lib.verdict(rule, "p") with input as segment({}) with data.profile as profile
}

test_not_applicable_to_ventilation if {
	verdict({"systems": [{"id": "s", "kind": "heat-recovery-ventilation", "pipe": [{"id": "p", "penetrations": [{"id": "n"}]}]}]}) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "pipe": [{"id": "p", "penetrations": [{"id": "n"}]}]}]} with data.profile as profile
	got == {
		["n", ["systems", 0, "kind"]],
		["n", ["systems", 0, "pipe", 0, "penetrations", 0, "through"]],
		["n", ["systems", 0, "pipe", 0, "penetrations", 0, "wall_is_hollow_block"]],
		["n", ["systems", 0, "pipe", 0, "penetrations", 0, "block_cores_sealed"]],
	}
}
