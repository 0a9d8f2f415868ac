package policy.pipe.no_water_trap_test

import data.policy.lib
import data.policy.pipe.no_water_trap as rule
import rego.v2

# SGM-SF 2017 (12/20) 6.2.2: traps that block the flow are banned.
profile := {"pipe": {"no_water_trap": {"depth": {"si": 0}, "drained": {"any_of": ["condensate-bypass", "other-drain"]}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

trap(depth, drainage) := object.union(
	segment(drainage),
	{"derived": {"segments": [{"id": "p", "at": "/systems/0/pipe/0", "trap_depth": depth}]}},
)

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

test_met if verdict(trap({"si": 0}, {})) == "met"

test_deficient if verdict(trap({"si": 0.0254}, {"drainage": "slopes-to-suction"})) == "deficient"

test_met_when_the_low_point_is_drained if verdict(trap({"si": 0.0254}, {"drainage": "other-drain"})) == "met"

test_unrecorded_whether_it_is_drained if verdict(trap({"si": 0.0254}, {})) == "unrecorded"

test_unrecorded if verdict(segment({})) == "unrecorded"

test_not_applicable_below_the_slab if verdict(segment({"above_ground": false})) == "not-applicable"

test_unrecorded_without_a_list_of_pipe if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab"}]} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {
		"systems": [{"id": "s", "pipe": [{"id": "p"}]}],
		"derived": {"segments": [{"id": "p", "at": "/systems/0/pipe/0"}]},
	}
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "pipe", 0, "above_ground"]],
		["p", ["systems", 0, "pipe", 0, "drainage"]],
		["p", ["derived", "segments", 0, "trap_depth"]],
	}
}
