package policy.pipe.airtight_test

import data.policy.lib
import data.policy.pipe.airtight as rule
import rego.v2

# SGM-SF 2017 (12/20) 6.2.1: duct and fittings of a system with a fan are tight
# against air and water except at intake, outlet and test ports. IRC 2018
# AF103.6.1 (from memory): gas-tight, and before there is any fan.
profile := {"pipe": {"airtight": {"not_for": {"any_of": ["passive", "rough-in"]}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

test_met if verdict(segment({"airtight": true})) == "met"

test_deficient if verdict(segment({"airtight": false})) == "deficient"

passive := {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive", "pipe": [{"id": "p", "above_ground": true, "airtight": false}]}]}

test_not_applicable_without_a_fan if verdict(passive) == "not-applicable"

test_deficient_without_a_fan_where_the_source_says_so if {
	"deficient" == lib.verdict(rule, "p") with input as passive with data.profile as {"pipe": {"airtight": {"not_for": {"any_of": []}}}}
}

test_not_applicable_without_fan_and_list if {
	"not-applicable" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]} with data.profile as profile
}

test_unrecorded if verdict(segment({})) == "unrecorded"

test_not_applicable_below_the_slab if verdict(segment({"above_ground": false})) == "not-applicable"

test_unrecorded_without_a_list_of_pipe if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab"}]} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "pipe": [{"id": "p"}]}]} with data.profile as profile
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "pipe", 0, "above_ground"]],
		["p", ["systems", 0, "pipe", 0, "airtight"]],
		["p", ["systems", 0, "powered_by"]],
	}
}
