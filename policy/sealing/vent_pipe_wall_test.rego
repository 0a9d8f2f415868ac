package policy.sealing.vent_pipe_wall_test

import data.policy.lib
import data.policy.sealing.vent_pipe_wall as rule
import rego.v2

# Illinois training text on 32 Ill. Adm. Code 422.150 and 422.160 (sub-clause not
# verified): penetrations of block or wood walls below grade are sealed on both
# faces. A penetration records only whether the wall is hollow block.
profile := {"sealing": {"vent_pipe_wall": {}}}

hole(fields) := {"systems": [{"id": "s", "pipe": [{"id": "p", "penetrations": [object.union({"id": "h", "through": "foundation-wall"}, fields)]}]}]}

verdict(job) := v if v := lib.verdict(rule, "h") with input as job with data.profile as profile

test_met if verdict(hole({"below_grade": true, "both_faces_sealed": true})) == "met"

test_deficient_in_hollow_block if {
	verdict(hole({"below_grade": true, "both_faces_sealed": false, "wall_is_hollow_block": true})) == "deficient"
}

test_undetermined_in_another_wall if {
	verdict(hole({"below_grade": true, "both_faces_sealed": false, "wall_is_hollow_block": false})) == "undetermined"
}

test_not_applicable_above_grade if verdict(hole({"below_grade": false, "both_faces_sealed": false})) == "not-applicable"

test_unrecorded if verdict(hole({"below_grade": true})) == "unrecorded"

test_unrecorded_depth if verdict(hole({"both_faces_sealed": true})) == "unrecorded"

test_unrecorded_lists if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s"}]}
	"unrecorded" == lib.verdict(rule, "p") with input as {"systems": [{"id": "s", "pipe": [{"id": "p"}]}]}
	"unrecorded" == lib.verdict(rule, "h") with input as {"systems": [{"id": "s", "pipe": [{"id": "p", "penetrations": [{"id": "h"}]}]}]}
}

test_other_places_are_no_subject if {
	got := rule.subjects with input as hole({"through": "roof"})
	count(got) == 0
}

test_says_what_is_missing if {
	got := rule.missing with input as hole({})
	got == {
		["h", ["systems", 0, "pipe", 0, "penetrations", 0, "below_grade"]],
		["h", ["systems", 0, "pipe", 0, "penetrations", 0, "both_faces_sealed"]],
		["h", ["systems", 0, "pipe", 0, "penetrations", 0, "wall_is_hollow_block"]],
	}
}
