package policy.fan.runs_continuously_test

import data.policy.fan.runs_continuously as rule
import data.policy.lib
import rego.v2

# CCAH 2020 exhibit 2: the fan runs 24 hours a day.
profile := {"fan": {"runs_continuously": {}}}

system(traits) := {"systems": [object.union({"id": "s", "kind": "sub-slab", "powered_by": "fan"}, traits)]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(system({"runs_continuously": true})) == "met"

test_deficient if verdict(system({"runs_continuously": false})) == "deficient"

test_unrecorded if verdict(system({})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "runs_continuously"]],
	}
}
