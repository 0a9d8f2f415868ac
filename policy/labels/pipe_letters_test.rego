package policy.labels.pipe_letters_test

import data.policy.labels.pipe_letters as rule
import data.policy.lib
import rego.v2

# No source gives a figure for houses that stand: SGM-SF 2017 (12/20) 8.4.4 was not
# read. The quarter inch here is only to try the rule.
profile := {"labels": {"pipe_letters": {"minimum": {"si": 0.00635}}}}

carrying(label) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"labels": [object.union({"id": "a", "kind": "pipe"}, label)],
}]}

full := {"letter_height": {"si": 0.00635}}

verdict(job) := v if v := lib.verdict(rule, "a") with input as job with data.profile as profile

test_met_at_exactly_the_limit if verdict(carrying(full)) == "met"

test_deficient_just_past_the_limit if verdict(carrying(object.union(full, {"letter_height": {"si": 0.006}}))) == "deficient"

test_unrecorded_letter_height if verdict(carrying(object.remove(full, ["letter_height"]))) == "unrecorded"

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
		"labels": [{"id": "a", "kind": "pipe"}],
	}]}) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "labels": [{"id": "a", "kind": "pipe"}, {"id": "b"}]}]} with data.profile as profile
	got == {
		["a", ["systems", 0, "kind"]],
		["a", ["systems", 0, "powered_by"]],
		["a", ["systems", 0, "labels", 0, "letter_height"]],
		["b", ["systems", 0, "labels", 1, "kind"]],
		["b", ["systems", 0, "kind"]],
		["b", ["systems", 0, "powered_by"]],
	}
}
