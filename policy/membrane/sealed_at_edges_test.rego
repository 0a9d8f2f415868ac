package policy.membrane.sealed_at_edges_test

import data.policy.lib
import data.policy.membrane.sealed_at_edges as rule
import rego.v2

# EPA RMS 1994 14.5.6 (from memory): should be sealed to piers and the inside of
# the walls. Illinois training text on 32 Ill. Adm. Code 422.160: is sealed.
profile := {"membrane": {"sealed_at_edges": {}}}

sheet(fields) := {"systems": [{"id": "s", "kind": "sub-membrane", "membrane": fields}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(sheet({"sealed_to_walls": true, "has_piers": true, "sealed_to_piers": true})) == "met"

test_met_without_piers if verdict(sheet({"sealed_to_walls": true, "has_piers": false})) == "met"

test_deficient_at_the_walls if verdict(sheet({"sealed_to_walls": false, "has_piers": false})) == "deficient"

test_deficient_at_the_piers if verdict(sheet({"sealed_to_walls": true, "sealed_to_piers": false})) == "deficient"

test_unrecorded if verdict(sheet({"has_piers": false})) == "unrecorded"

test_unrecorded_piers if verdict(sheet({"sealed_to_walls": true, "sealed_to_piers": true})) == "unrecorded"

test_not_applicable_without_a_membrane if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "membrane", "sealed_to_walls"]],
		["s", ["systems", 0, "membrane", "has_piers"]],
		["s", ["systems", 0, "membrane", "sealed_to_piers"]],
	}
}
