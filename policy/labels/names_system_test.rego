package policy.labels.names_system_test

import data.policy.labels.names_system as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 16.5 (from memory): the name of the system, also on pipe. SGM-SF 2017
# (12/20) 8.4.2: the title of the primary label states the purpose.
profile := {"labels": {"names_system": {"kinds": {"any_of": ["system", "pipe"]}}}}

carrying(label) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"labels": [object.union({"id": "a", "kind": "system"}, label)],
}]}

full := {"says_system": true}

verdict(job) := v if v := lib.verdict(rule, "a") with input as job with data.profile as profile

test_met if verdict(carrying(full)) == "met"

test_deficient_says_system if verdict(carrying(object.union(full, {"says_system": false}))) == "deficient"

test_unrecorded_says_system if verdict(carrying(object.remove(full, ["says_system"]))) == "unrecorded"

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
		["a", ["systems", 0, "labels", 0, "says_system"]],
		["b", ["systems", 0, "labels", 1, "kind"]],
		["b", ["systems", 0, "kind"]],
		["b", ["systems", 0, "powered_by"]],
	}
}
