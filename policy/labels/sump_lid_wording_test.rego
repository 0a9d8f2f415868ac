package policy.labels.sump_lid_wording_test

import data.policy.labels.sump_lid_wording as rule
import data.policy.lib
import rego.v2

# CCAH 2020 404.1.1.1: part of the radon system, not to be tampered with, letters of
# 1/4 in or more in a contrasting color, in new houses.
profile := {"labels": {"sump_lid_wording": {"minimum": {"si": 0.00635}, "not_for": {"any_of": ["existing"]}}}}

carrying(label) := {"house": {"new_construction": true}, "systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"labels": [object.union({"id": "a", "kind": "sump-lid"}, label)],
}]}

full := {"says_system": true, "says_do_not_tamper": true, "contrasting": true, "letter_height": {"si": 0.00635}}

verdict(job) := v if v := lib.verdict(rule, "a") with input as job with data.profile as profile

test_met_at_exactly_the_limit if verdict(carrying(full)) == "met"

test_deficient_says_system if verdict(carrying(object.union(full, {"says_system": false}))) == "deficient"

test_deficient_says_do_not_tamper if verdict(carrying(object.union(full, {"says_do_not_tamper": false}))) == "deficient"

test_deficient_contrasting if verdict(carrying(object.union(full, {"contrasting": false}))) == "deficient"

test_deficient_just_past_the_limit if verdict(carrying(object.union(full, {"letter_height": {"si": 0.006}}))) == "deficient"

test_unrecorded_says_system if verdict(carrying(object.remove(full, ["says_system"]))) == "unrecorded"

test_unrecorded_says_do_not_tamper if verdict(carrying(object.remove(full, ["says_do_not_tamper"]))) == "unrecorded"

test_unrecorded_contrasting if verdict(carrying(object.remove(full, ["contrasting"]))) == "unrecorded"

test_unrecorded_letter_height if verdict(carrying(object.remove(full, ["letter_height"]))) == "unrecorded"

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
	got := rule.missing with input as {"systems": [{"id": "s", "labels": [{"id": "a", "kind": "sump-lid"}, {"id": "b"}]}]} with data.profile as profile
	got == {
		["a", ["house", "new_construction"]],
		["b", ["house", "new_construction"]],
		["a", ["systems", 0, "labels", 0, "says_system"]],
		["a", ["systems", 0, "labels", 0, "says_do_not_tamper"]],
		["a", ["systems", 0, "labels", 0, "contrasting"]],
		["a", ["systems", 0, "labels", 0, "letter_height"]],
		["b", ["systems", 0, "labels", 1, "kind"]],
	}
}
