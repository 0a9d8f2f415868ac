package policy.membrane.no_stakes_test

import data.policy.lib
import data.policy.membrane.no_stakes as rule
import rego.v2

# Common practice, also in a state weatherization field guide: no stakes through it.
profile := {"membrane": {"no_stakes": {}}}

sheet(fields) := {"systems": [{"id": "s", "kind": "sub-membrane", "membrane": fields}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(sheet({"stakes_through": false})) == "met"

test_deficient if verdict(sheet({"stakes_through": true})) == "deficient"

test_unrecorded if verdict(sheet({})) == "unrecorded"

test_not_applicable_without_a_membrane if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "membrane", "stakes_through"]],
	}
}
