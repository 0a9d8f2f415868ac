package policy.sealing.channel_drains_test

import data.policy.lib
import data.policy.sealing.channel_drains as rule
import rego.v2

# EPA RMS 1994 14.5.4 and 14.7.3 (from memory): the channel goes on draining.
profile := {"sealing": {"channel_drains": {}}}

channel(fields) := {"entry_routes": [object.union({"id": "r", "kind": "perimeter-channel"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "r") with input as job with data.profile as profile

test_met if verdict(channel({"treatment": "sealed", "still_drains": true})) == "met"

test_deficient if verdict(channel({"treatment": "sealed", "still_drains": false})) == "deficient"

test_unrecorded if verdict(channel({"treatment": "sealed"})) == "unrecorded"

test_unrecorded_treatment if verdict(channel({"still_drains": true})) == "unrecorded"

test_not_applicable_when_left_open if verdict(channel({"treatment": "left-open"})) == "not-applicable"

test_says_what_is_missing if {
	got := rule.missing with input as channel({})
	got == {
		["r", ["entry_routes", 0, "treatment"]],
		["r", ["entry_routes", 0, "still_drains"]],
	}
}

test_unrecorded_kind if {
	"unrecorded" == lib.verdict(rule, "x") with input as {"entry_routes": [{"id": "x"}]} with data.profile as profile
}

test_other_openings_are_no_subject if {
	got := rule.subjects with input as {"entry_routes": [{"id": "x", "kind": "wall-floor-joint"}]}
	count(got) == 0
}
