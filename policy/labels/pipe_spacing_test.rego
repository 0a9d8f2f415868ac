package policy.labels.pipe_spacing_test

import data.policy.labels.pipe_spacing as rule
import data.policy.lib
import rego.v2

# National Building Code of Canada 9.13.4 (from memory, as quoted): every 1.8 m, in
# new houses.
profile := {"labels": {"pipe_spacing": {"maximum": {"si": 1.8}, "not_for": {"any_of": ["existing"]}}}}

laid(labels) := {
	"house": {"new_construction": true},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "rough-in", "labels": labels}],
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_the_spacing if verdict(laid([{"id": "a", "kind": "pipe", "spacing": {"si": 1.8}}])) == "met"

test_deficient_just_past_it if verdict(laid([{"id": "a", "kind": "pipe", "spacing": {"si": 1.81}}])) == "deficient"

test_deficient_on_one_of_two_runs if {
	verdict(laid([
		{"id": "a", "kind": "pipe", "spacing": {"si": 1.5}},
		{"id": "b", "kind": "pipe", "spacing": {"si": 3}},
	])) == "deficient"
}

test_deficient_without_a_label if verdict(laid([])) == "deficient"

test_unrecorded if verdict(laid([{"id": "a", "kind": "pipe"}])) == "unrecorded"

test_unrecorded_kind_of_label if verdict(laid([{"id": "a", "spacing": {"si": 1}}])) == "unrecorded"

test_unrecorded_labels if {
	verdict({"house": {"new_construction": true}, "systems": [{"id": "s", "kind": "sub-slab"}]}) == "unrecorded"
}

test_unrecorded_house if verdict(object.remove(laid([]), ["house"])) == "unrecorded"

test_not_applicable_to_a_house_that_stands if {
	verdict(object.union(laid([]), {"house": {"new_construction": false}})) == "not-applicable"
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
		["s", ["house", "new_construction"]],
		["s", ["systems", 0, "labels", 0, "kind"]],
		["s", ["systems", 0, "labels", 1, "spacing"]],
	}
}
