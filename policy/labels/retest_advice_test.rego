package policy.labels.retest_advice_test

import data.policy.labels.retest_advice as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 16.5 (from memory) and SGM-SF 2017 (12/20) 8.4.2.1: at least every two years.
profile := {"labels": {"retest_advice": {"interval": {"si": 63072000}, "not_for": {"any_of": ["tenant", "association"]}}}}

carrying(label) := {"house": {"occupancy": "owner"}, "systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"labels": [object.union({"id": "a", "kind": "system"}, label)],
}]}

full := {"retest_advice": {"si": 63072000}}

verdict(job) := v if v := lib.verdict(rule, "a") with input as job with data.profile as profile

test_met_at_exactly_the_limit if verdict(carrying(full)) == "met"

test_deficient_just_past_the_limit if verdict(carrying(object.union(full, {"retest_advice": {"si": 63072001}}))) == "deficient"

test_unrecorded_retest_advice if verdict(carrying(object.remove(full, ["retest_advice"]))) == "unrecorded"

test_unrecorded_kind_of_label if {
	verdict({"house": {"occupancy": "owner"}, "systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "fan",
		"labels": [object.union({"id": "a"}, full)],
	}]}) == "unrecorded"
}

test_unrecorded_labels if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}]} with data.profile as profile
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_not_applicable_without_a_fan if {
	verdict({"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "passive",
		"labels": [{"id": "a", "kind": "system"}],
	}]}) == "not-applicable"
}

test_not_applicable_to_another_house if {
	verdict(object.union(carrying(full), {"house": {"occupancy": "tenant"}})) == "not-applicable"
}

test_unrecorded_house if verdict({"systems": carrying(full).systems}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "labels": [{"id": "a", "kind": "system"}, {"id": "b"}]}]} with data.profile as profile
	got == {
		["a", ["systems", 0, "kind"]],
		["a", ["systems", 0, "powered_by"]],
		["a", ["house", "occupancy"]],
		["b", ["house", "occupancy"]],
		["a", ["systems", 0, "labels", 0, "retest_advice"]],
		["b", ["systems", 0, "labels", 1, "kind"]],
		["b", ["systems", 0, "kind"]],
		["b", ["systems", 0, "powered_by"]],
	}
}
