package policy.sealing.wall_penetrations_test

import data.policy.lib
import data.policy.sealing.wall_penetrations as rule
import rego.v2

# Illinois training text on 32 Ill. Adm. Code 422.150 and 422.160 (sub-clause not
# verified): penetrations of block or wood walls below grade are sealed on both
# faces.
profile := {"sealing": {"wall_penetrations": {"walls": {"any_of": ["hollow-block", "solid-block", "wood"]}}}}

sleeve(wall, part, both) := {
	"house": {"foundations": [{"id": "f", "wall_kind": wall}]},
	"entry_routes": [{
		"id": "r", "kind": "pipe-penetration",
		"foundation": "f", "part": part, "both_faces_sealed": both,
	}],
}

verdict(job) := v if v := lib.verdict(rule, "r") with input as job with data.profile as profile

test_met if verdict(sleeve("hollow-block", "wall-below-grade", true)) == "met"

test_deficient if verdict(sleeve("wood", "wall-below-grade", false)) == "deficient"

test_not_applicable_in_a_slab if verdict(sleeve("hollow-block", "slab", false)) == "not-applicable"

test_not_applicable_in_poured_concrete if verdict(sleeve("poured", "wall-below-grade", false)) == "not-applicable"

test_unrecorded if {
	verdict({
		"house": {"foundations": [{"id": "f", "wall_kind": "wood"}]},
		"entry_routes": [{"id": "r", "kind": "pipe-penetration", "foundation": "f", "part": "wall-below-grade"}],
	}) == "unrecorded"
}

test_unrecorded_wall if {
	verdict({"entry_routes": [{
		"id": "r", "kind": "pipe-penetration",
		"foundation": "f", "part": "wall-below-grade", "both_faces_sealed": true,
	}]}) == "unrecorded"
}

test_unrecorded_kind if verdict({"entry_routes": [{"id": "r"}]}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {"entry_routes": [{"id": "r", "kind": "pipe-penetration"}]}
	got == {
		["r", ["entry_routes", 0, "part"]],
		["r", ["entry_routes", 0, "foundation"]],
		["r", ["house", "foundations"]],
		["r", ["entry_routes", 0, "both_faces_sealed"]],
	}
}

test_says_that_the_wall_is_missing if {
	got := rule.missing with data.profile as profile with input as {
		"house": {"foundations": [{"id": "f"}]},
		"entry_routes": [{
			"id": "r", "kind": "pipe-penetration",
			"foundation": "f", "part": "wall-below-grade", "both_faces_sealed": true,
		}],
	}
	got == {["r", ["house", "foundations", 0, "wall_kind"]]}
}
