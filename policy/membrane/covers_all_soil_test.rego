package policy.membrane.covers_all_soil_test

import data.policy.lib
import data.policy.membrane.covers_all_soil as rule
import rego.v2

# Common practice, also on public inspection lists: it covers the soil and reaches
# the walls.
profile := {"membrane": {"covers_all_soil": {}}}

sheet(fields) := {"systems": [{"id": "s", "kind": "sub-membrane", "membrane": fields}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(sheet({"covers_all_soil": true})) == "met"

test_deficient if verdict(sheet({"covers_all_soil": false})) == "deficient"

test_unrecorded if verdict(sheet({})) == "unrecorded"

test_not_applicable_without_a_membrane if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "membrane", "covers_all_soil"]],
	}
}
