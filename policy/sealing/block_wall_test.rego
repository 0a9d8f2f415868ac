package policy.sealing.block_wall_test

import data.policy.lib
import data.policy.sealing.block_wall as rule
import rego.v2

# EPA RMS 1994 14.5.3 (from memory): with suction on block walls their tops and the
# openings in reach are closed.
profile := {"sealing": {"block_wall": {"tops": {"any_of": ["solid-course", "grouted", "sealed"]}}}}

wall(fields) := {
	"systems": [{"id": "s", "kind": "block-wall", "foundations": ["f"]}],
	"house": {"foundations": [object.union({"id": "f"}, fields)]},
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(wall({"block_tops": "grouted", "wall_openings_closed": true})) == "met"

test_deficient_with_open_tops if verdict(wall({"block_tops": "open", "wall_openings_closed": true})) == "deficient"

test_deficient_with_open_holes if verdict(wall({"block_tops": "grouted", "wall_openings_closed": false})) == "deficient"

test_unrecorded if verdict(wall({"block_tops": "grouted"})) == "unrecorded"

test_not_applicable_to_a_slab_system if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {
		"systems": [{"id": "s", "foundations": ["f"]}, {"id": "t", "kind": "block-wall"}],
		"house": {"foundations": [{"id": "f"}]},
	}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["house", "foundations", 0, "block_tops"]],
		["s", ["house", "foundations", 0, "wall_openings_closed"]],
		["t", ["systems", 1, "foundations"]],
	}
}
