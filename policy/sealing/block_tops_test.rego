package policy.sealing.block_tops_test

import data.policy.lib
import data.policy.sealing.block_tops as rule
import rego.v2

# CCAH 2020 404.1.2 and IRC 2018 AF103.4.5 (from memory): in new houses the top
# course of hollow block is solid or grouted.
profile := {"sealing": {"block_tops": {"tops": {"any_of": ["solid-course", "grouted"]}, "not_for": {"any_of": ["existing"]}}}}

wall(new, tops) := {"house": {
	"new_construction": new,
	"foundations": [{"id": "f", "wall_kind": "hollow-block", "block_tops": tops}],
}}

verdict(job) := v if v := lib.verdict(rule, "f") with input as job with data.profile as profile

test_met if verdict(wall(true, "grouted")) == "met"

test_deficient if verdict(wall(true, "open")) == "deficient"

test_unrecorded if {
	verdict({"house": {"new_construction": true, "foundations": [{"id": "f", "wall_kind": "hollow-block"}]}}) == "unrecorded"
}

test_unrecorded_wall if {
	verdict({"house": {"new_construction": true, "foundations": [{"id": "f", "block_tops": "open"}]}}) == "unrecorded"
}

test_not_applicable_to_an_old_house if verdict(wall(false, "open")) == "not-applicable"

test_poured_walls_are_no_subject if {
	got := rule.subjects with input as {"house": {"foundations": [{"id": "f", "wall_kind": "poured"}]}}
	count(got) == 0
}

test_unrecorded_without_foundations if {
	"unrecorded" == lib.verdict(rule, "house") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {"house": {"foundations": [{"id": "f", "wall_kind": "hollow-block"}, {"id": "g"}]}}
	got == {
		["f", ["house", "new_construction"]],
		["f", ["house", "foundations", 0, "block_tops"]],
		["g", ["house", "new_construction"]],
		["g", ["house", "foundations", 1, "wall_kind"]],
	}
}
