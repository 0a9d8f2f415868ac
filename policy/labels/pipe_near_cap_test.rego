package policy.labels.pipe_near_cap_test

import data.policy.labels.pipe_near_cap as rule
import data.policy.lib
import rego.v2

# National Building Code of Canada 9.13.4 (from memory, as quoted): a label near the
# cap, in new houses.
profile := {"labels": {"pipe_near_cap": {"not_for": {"any_of": ["existing"]}}}}

laid(labels) := {
	"house": {"new_construction": true},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "rough-in", "labels": labels}],
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(laid([{"id": "a", "kind": "pipe", "near_cap": true}])) == "met"

test_deficient if verdict(laid([{"id": "a", "kind": "pipe", "near_cap": false}])) == "deficient"

test_deficient_without_a_label if verdict(laid([])) == "deficient"

test_unrecorded if verdict(laid([{"id": "a", "kind": "pipe"}])) == "unrecorded"

test_unrecorded_kind_of_label if verdict(laid([{"id": "a"}])) == "unrecorded"

test_unrecorded_labels if {
	verdict({"house": {"new_construction": true}, "systems": [{"id": "s", "kind": "sub-slab", "powered_by": "rough-in"}]}) == "unrecorded"
}

test_unrecorded_house if verdict(object.remove(laid([]), ["house"])) == "unrecorded"

test_not_applicable_to_a_house_that_stands if {
	verdict(object.union(laid([]), {"house": {"new_construction": false}})) == "not-applicable"
}

test_not_applicable_with_a_stack if {
	verdict({"house": {"new_construction": true}, "systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"
}

test_not_applicable_to_ventilation if {
	verdict({"house": {"new_construction": true}, "systems": [{"id": "s", "kind": "heat-recovery-ventilation"}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "labels": [{"id": "a"}, {"id": "b", "kind": "pipe"}]}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["house", "new_construction"]],
		["s", ["systems", 0, "labels", 0, "kind"]],
		["s", ["systems", 0, "labels", 1, "near_cap"]],
	}
}
