package policy.labels.tag_beside_gauge_test

import data.policy.labels.tag_beside_gauge as rule
import data.policy.lib
import rego.v2

# Minnesota Rules 4620.7600 subp. 3: next to the pressure gauge. Illinois (from
# memory, 32 Ill. Adm. Code 422.150(h)(14)(D)): on the pipe beside the monitor.
profile := {"labels": {"tag_beside_gauge": {"places": {"any_of": ["pipe"]}}}}

carrying(label) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"labels": [object.union({"id": "a", "kind": "state-tag"}, label)],
}]}

full := {"beside_gauge": true, "place": "pipe"}

verdict(job) := v if v := lib.verdict(rule, "a") with input as job with data.profile as profile

test_met if verdict(carrying(full)) == "met"

test_deficient_beside_gauge if verdict(carrying(object.union(full, {"beside_gauge": false}))) == "deficient"

test_deficient_place if verdict(carrying(object.union(full, {"place": "service-panel"}))) == "deficient"

test_unrecorded_beside_gauge if verdict(carrying(object.remove(full, ["beside_gauge"]))) == "unrecorded"

test_unrecorded_place if verdict(carrying(object.remove(full, ["place"]))) == "unrecorded"

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
		"labels": [{"id": "a", "kind": "state-tag"}],
	}]}) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "labels": [{"id": "a", "kind": "state-tag"}, {"id": "b"}]}]} with data.profile as profile
	got == {
		["a", ["systems", 0, "kind"]],
		["a", ["systems", 0, "powered_by"]],
		["a", ["systems", 0, "labels", 0, "beside_gauge"]],
		["a", ["systems", 0, "labels", 0, "place"]],
		["b", ["systems", 0, "labels", 1, "kind"]],
		["b", ["systems", 0, "kind"]],
		["b", ["systems", 0, "powered_by"]],
	}
}
