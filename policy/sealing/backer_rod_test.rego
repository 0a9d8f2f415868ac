package policy.sealing.backer_rod_test

import data.policy.lib
import data.policy.sealing.backer_rod as rule
import rego.v2

# EPA RMS 1994 14.5.4 (from memory): backer rod in gaps wider than 1/2 in.
profile := {"sealing": {"backer_rod": {
	"kinds": {"any_of": ["wall-floor-joint", "perimeter-channel"]},
	"without": {"si": 0.0127},
}}}

joint(fields) := {"entry_routes": [object.union({"id": "r", "kind": "wall-floor-joint", "treatment": "sealed"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "r") with input as job with data.profile as profile

test_met if verdict(joint({"gap_width": {"si": 0.02}, "backer_rod": true})) == "met"

test_deficient if verdict(joint({"gap_width": {"si": 0.0128}, "backer_rod": false})) == "deficient"

test_not_applicable_at_exactly_half_an_inch if {
	verdict(joint({"gap_width": {"si": 0.0127}, "backer_rod": false})) == "not-applicable"
}

test_not_applicable_out_of_reach if {
	verdict(joint({"treatment": "not-reachable", "gap_width": {"si": 0.02}})) == "not-applicable"
}

test_unrecorded_rod if verdict(joint({"gap_width": {"si": 0.02}})) == "unrecorded"

test_unrecorded_gap if verdict(joint({"backer_rod": false})) == "unrecorded"

test_unrecorded_kind if {
	"unrecorded" == lib.verdict(rule, "x") with input as {"entry_routes": [{"id": "x"}]} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"entry_routes": [{"id": "r", "kind": "wall-floor-joint"}]} with data.profile as profile
	got == {
		["r", ["entry_routes", 0, "treatment"]],
		["r", ["entry_routes", 0, "gap_width"]],
		["r", ["entry_routes", 0, "backer_rod"]],
	}
}
