package policy.labels.membrane_test

import data.policy.labels.membrane as rule
import data.policy.lib
import rego.v2

# RMS-LB 2018 (12/20) 6.1.3.3: membrane or access labelled (points to 8.4.6(b)).
profile := {"labels": {"membrane": {"kinds": {"any_of": ["sub-membrane"]}}}}

carrying(labels) := {"systems": [{"id": "s", "kind": "sub-membrane", "powered_by": "fan", "labels": labels}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(carrying([{"id": "a", "kind": "membrane"}])) == "met"

test_deficient if verdict(carrying([{"id": "a", "kind": "system"}])) == "deficient"

test_deficient_without_any_label if verdict(carrying([])) == "deficient"

test_unrecorded_kind_of_label if verdict(carrying([{"id": "a"}])) == "unrecorded"

test_unrecorded_labels if verdict({"systems": [{"id": "s", "kind": "sub-membrane", "powered_by": "fan"}]}) == "unrecorded"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive", "labels": []}]}) == "not-applicable"
}

test_not_applicable_to_other_systems if {
	verdict({"systems": [{"id": "s", "kind": "drain-tile", "powered_by": "fan", "labels": []}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "labels": [{"id": "a"}]}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "labels", 0, "kind"]],
	}
}
