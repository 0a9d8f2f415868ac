package policy.suction.sealed_test

import data.policy.lib
import data.policy.suction.sealed as rule
import rego.v2

# EPA RMS 1994 14.5.2 (from memory): penetrations of slab, wall and membrane are
# cleaned and sealed airtight. That tape does not last is common practice.
profile := {"suction": {"sealed": {"lasting": {"any_of": ["urethane-caulk", "silicone", "gasket", "non-shrink-grout", "mortar", "expanding-foam", "boot"]}}}}

point(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab",
	"suction_points": [object.union({"id": "p"}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

test_met if verdict(point({"sealed": true, "seal_material": "urethane-caulk"})) == "met"

test_deficient_open if verdict(point({"sealed": false, "seal_material": "silicone"})) == "deficient"

test_deficient_with_tape if verdict(point({"sealed": true, "seal_material": "tape"})) == "deficient"

test_unrecorded_with_what if verdict(point({"sealed": true})) == "unrecorded"

test_unrecorded if verdict(point({})) == "unrecorded"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab"}]} with data.profile as profile
}

test_not_applicable_to_pressurization if {
	verdict({"systems": [{"id": "s", "kind": "pressurization", "suction_points": [{"id": "p"}]}]}) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "suction_points": [{"id": "p"}]}]} with data.profile as profile
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "suction_points", 0, "sealed"]],
		["p", ["systems", 0, "suction_points", 0, "seal_material"]],
	}
}
