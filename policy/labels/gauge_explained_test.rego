package policy.labels.gauge_explained_test

import data.policy.labels.gauge_explained as rule
import data.policy.lib
import rego.v2

# SGM-SF 2017 (12/20) 8.4.2.1 and 8.4.2.2: description of the monitor and what to do
# on failure, whoever looks after the system.
carrying(label) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"labels": [object.union({"id": "a", "kind": "system"}, label)],
}]}

full := {"gauge_explained": true}

verdict(job) := v if v := lib.verdict(rule, "a") with input as job

test_met if verdict(carrying(full)) == "met"

test_deficient_gauge_explained if verdict(carrying(object.union(full, {"gauge_explained": false}))) == "deficient"

test_unrecorded_gauge_explained if verdict(carrying(object.remove(full, ["gauge_explained"]))) == "unrecorded"

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
		"labels": [{"id": "a", "kind": "system"}],
	}]}) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "labels": [{"id": "a", "kind": "system"}, {"id": "b"}]}]}
	got == {
		["a", ["systems", 0, "kind"]],
		["a", ["systems", 0, "powered_by"]],
		["a", ["systems", 0, "labels", 0, "gauge_explained"]],
		["b", ["systems", 0, "labels", 1, "kind"]],
		["b", ["systems", 0, "kind"]],
		["b", ["systems", 0, "powered_by"]],
	}
}
