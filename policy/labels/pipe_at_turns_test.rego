package policy.labels.pipe_at_turns_test

import data.policy.labels.pipe_at_turns as rule
import data.policy.lib
import rego.v2

# National Building Code of Canada 9.13.4 (from memory, as quoted): at every change of direction, in new houses.
profile := {"labels": {"pipe_at_turns": {"not_for": {"any_of": ["existing"]}}}}

carrying(label) := {"house": {"new_construction": true}, "systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"labels": [object.union({"id": "a", "kind": "pipe"}, label)],
}]}

full := {"at_each_turn": true}

verdict(job) := v if v := lib.verdict(rule, "a") with input as job with data.profile as profile

test_met if verdict(carrying(full)) == "met"

test_deficient_at_each_turn if verdict(carrying(object.union(full, {"at_each_turn": false}))) == "deficient"

test_unrecorded_at_each_turn if verdict(carrying(object.remove(full, ["at_each_turn"]))) == "unrecorded"

test_unrecorded_kind_of_label if {
	verdict({"house": {"new_construction": true}, "systems": [{
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

test_not_applicable_to_another_house if {
	verdict(object.union(carrying(full), {"house": {"new_construction": false}})) == "not-applicable"
}

test_unrecorded_house if verdict({"systems": carrying(full).systems}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "labels": [{"id": "a", "kind": "pipe"}, {"id": "b"}]}]} with data.profile as profile
	got == {
		["a", ["house", "new_construction"]],
		["b", ["house", "new_construction"]],
		["a", ["systems", 0, "labels", 0, "at_each_turn"]],
		["b", ["systems", 0, "labels", 1, "kind"]],
	}
}
