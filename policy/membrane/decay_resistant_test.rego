package policy.membrane.decay_resistant_test

import data.policy.lib
import data.policy.membrane.decay_resistant as rule
import rego.v2

# EPA RMS 1994 15.10 (from memory): pressure-treated or decay-resistant wood.
profile := {"membrane": {"decay_resistant": {}}}

sheet(fields) := {"systems": [{"id": "s", "kind": "sub-membrane", "membrane": fields}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(sheet({"held_by_wood": true, "wood_treated": true})) == "met"

test_deficient if verdict(sheet({"held_by_wood": true, "wood_treated": false})) == "deficient"

test_unrecorded if verdict(sheet({"held_by_wood": true})) == "unrecorded"

test_unrecorded_condition if verdict(sheet({"wood_treated": true})) == "unrecorded"

test_not_applicable if verdict(sheet({"held_by_wood": false, "wood_treated": false})) == "not-applicable"

test_not_applicable_without_a_membrane if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "membrane", "held_by_wood"]],
		["s", ["systems", 0, "membrane", "wood_treated"]],
	}
}
