package policy.sealing.utility_penetrations_test

import data.policy.lib
import data.policy.sealing.utility_penetrations as rule
import rego.v2

# EPA RMS 1994 14.5.2 (from memory): other utility penetrations are sealed too.
profile := {"sealing": {"utility_penetrations": {}}}

sleeve(fields) := {"entry_routes": [object.union({"id": "r", "kind": "pipe-penetration"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "r") with input as job with data.profile as profile

test_met if verdict(sleeve({"treatment": "sealed", "admits_soil_gas": false})) == "met"

test_deficient_when_left_open if verdict(sleeve({"treatment": "left-open"})) == "deficient"

test_deficient_when_the_seal_leaks if verdict(sleeve({"treatment": "sealed", "admits_soil_gas": true})) == "deficient"

test_unrecorded if verdict(sleeve({"treatment": "sealed"})) == "unrecorded"

test_not_applicable_out_of_reach if verdict(sleeve({"treatment": "not-reachable"})) == "not-applicable"

test_unrecorded_without_entry_routes if {
	"unrecorded" == lib.verdict(rule, "entry_routes") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as sleeve({})
	got == {
		["r", ["entry_routes", 0, "treatment"]],
		["r", ["entry_routes", 0, "admits_soil_gas"]],
	}
}
