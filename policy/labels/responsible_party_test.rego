package policy.labels.responsible_party_test

import data.policy.labels.responsible_party as rule
import data.policy.lib
import rego.v2

# SGM-SF 2017 (12/20) 8.4.2.2: name and contact of the responsible party, where others than the occupants maintain.
profile := {"labels": {"responsible_party": {"not_for": {"any_of": ["owner", "vacant"]}}}}

carrying(label) := {"house": {"occupancy": "tenant"}, "systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"labels": [object.union({"id": "a", "kind": "system"}, label)],
}]}

full := {"responsible_party": true, "phone": true}

verdict(job) := v if v := lib.verdict(rule, "a") with input as job with data.profile as profile

test_met if verdict(carrying(full)) == "met"

test_deficient_responsible_party if verdict(carrying(object.union(full, {"responsible_party": false}))) == "deficient"

test_deficient_phone if verdict(carrying(object.union(full, {"phone": false}))) == "deficient"

test_unrecorded_responsible_party if verdict(carrying(object.remove(full, ["responsible_party"]))) == "unrecorded"

test_unrecorded_phone if verdict(carrying(object.remove(full, ["phone"]))) == "unrecorded"

test_unrecorded_kind_of_label if {
	verdict({"house": {"occupancy": "tenant"}, "systems": [{
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
	verdict(object.union(carrying(full), {"house": {"occupancy": "owner"}})) == "not-applicable"
}

test_unrecorded_house if verdict({"systems": carrying(full).systems}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "labels": [{"id": "a", "kind": "system"}, {"id": "b"}]}]} with data.profile as profile
	got == {
		["a", ["systems", 0, "kind"]],
		["a", ["systems", 0, "powered_by"]],
		["a", ["house", "occupancy"]],
		["b", ["house", "occupancy"]],
		["a", ["systems", 0, "labels", 0, "responsible_party"]],
		["a", ["systems", 0, "labels", 0, "phone"]],
		["b", ["systems", 0, "labels", 1, "kind"]],
		["b", ["systems", 0, "kind"]],
		["b", ["systems", 0, "powered_by"]],
	}
}
