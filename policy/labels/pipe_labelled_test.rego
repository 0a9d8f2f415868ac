package policy.labels.pipe_labelled_test

import data.policy.labels.pipe_labelled as rule
import data.policy.lib
import rego.v2

# SGM-SF 2017 (12/20) 6.2.4: duct pipe is labelled as the labelling section says; that text was not read.
carrying(labels) := {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "labels": labels}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job

test_met if verdict(carrying([{"id": "a", "kind": "pipe"}])) == "met"

test_deficient if verdict(carrying([{"id": "a", "kind": "system"}])) == "deficient"

test_deficient_without_any_label if verdict(carrying([])) == "deficient"

test_unrecorded_kind_of_label if verdict(carrying([{"id": "a"}])) == "unrecorded"

test_unrecorded_labels if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}]}) == "unrecorded"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive", "labels": []}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "labels": [{"id": "a"}]}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "labels", 0, "kind"]],
	}
}
