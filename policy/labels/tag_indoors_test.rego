package policy.labels.tag_indoors_test

import data.policy.labels.tag_indoors as rule
import data.policy.lib
import rego.v2

# Minnesota Rules 4620.7600 subp. 3: indoors.
carrying(label) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"labels": [object.union({"id": "a", "kind": "state-tag"}, label)],
}]}

full := {"indoors": true}

verdict(job) := v if v := lib.verdict(rule, "a") with input as job

test_met if verdict(carrying(full)) == "met"

test_deficient_indoors if verdict(carrying(object.union(full, {"indoors": false}))) == "deficient"

test_unrecorded_indoors if verdict(carrying(object.remove(full, ["indoors"]))) == "unrecorded"

test_unrecorded_kind_of_label if {
	verdict({"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "fan",
		"labels": [object.union({"id": "a"}, full)],
	}]}) == "unrecorded"
}

test_unrecorded_labels if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}]}
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}

test_not_applicable_without_a_fan if {
	verdict({"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "passive",
		"labels": [{"id": "a", "kind": "state-tag"}],
	}]}) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "labels": [{"id": "a", "kind": "state-tag"}, {"id": "b"}]}]}
	got == {
		["a", ["systems", 0, "kind"]],
		["a", ["systems", 0, "powered_by"]],
		["a", ["systems", 0, "labels", 0, "indoors"]],
		["b", ["systems", 0, "labels", 1, "kind"]],
		["b", ["systems", 0, "kind"]],
		["b", ["systems", 0, "powered_by"]],
	}
}
