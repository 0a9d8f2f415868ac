package policy.membrane.gap_to_wood_test

import data.policy.lib
import data.policy.membrane.gap_to_wood as rule
import rego.v2

# Common practice where local code asks for it, with the figure of a state
# weatherization field guide: 3 in.
profile := {"membrane": {"gap_to_wood": {"minimum": {"si": 0.0762}}}}

sheet(fields) := {"systems": [{"id": "s", "kind": "sub-membrane", "membrane": fields}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_three_inches if verdict(sheet({"gap_asked_for": true, "gap_to_wood": {"si": 0.0762}})) == "met"

test_deficient if verdict(sheet({"gap_asked_for": true, "gap_to_wood": {"si": 0.07}})) == "deficient"

test_unrecorded if verdict(sheet({"gap_asked_for": true})) == "unrecorded"

test_unrecorded_condition if verdict(sheet({"gap_to_wood": {"si": 0.0762}})) == "unrecorded"

test_not_applicable if verdict(sheet({"gap_asked_for": false})) == "not-applicable"

test_not_applicable_without_a_membrane if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "membrane", "gap_asked_for"]],
		["s", ["systems", 0, "membrane", "gap_to_wood"]],
	}
}
