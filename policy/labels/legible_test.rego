package policy.labels.legible_test

import data.policy.labels.legible as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 16.5 (from memory): legible from 3 ft or more.
profile := {"labels": {"legible": {"minimum": {"si": 0.9144}}}}

carrying(label) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"labels": [object.union({"id": "a", "kind": "system"}, label)],
}]}

full := {"legible_from": {"si": 0.9144}}

verdict(job) := v if v := lib.verdict(rule, "a") with input as job with data.profile as profile

test_met_at_exactly_the_limit if verdict(carrying(full)) == "met"

test_deficient_just_past_the_limit if verdict(carrying(object.union(full, {"legible_from": {"si": 0.9143}}))) == "deficient"

test_unrecorded_legible_from if verdict(carrying(object.remove(full, ["legible_from"]))) == "unrecorded"

test_unrecorded_kind_of_label if {
	verdict({"systems": [{
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

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "labels": [{"id": "a", "kind": "system"}, {"id": "b"}]}]} with data.profile as profile
	got == {
		["a", ["systems", 0, "kind"]],
		["a", ["systems", 0, "powered_by"]],
		["a", ["systems", 0, "labels", 0, "legible_from"]],
		["b", ["systems", 0, "labels", 1, "kind"]],
		["b", ["systems", 0, "kind"]],
		["b", ["systems", 0, "powered_by"]],
	}
}
