package policy.labels.system_label_test

import data.policy.labels.system_label as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 16.5 (from memory): a description label on system, panel or another
# prominent place. SGM-SF 2017 (12/20) 8.4.2: a primary label.
carrying(labels) := {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "labels": labels}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job

test_met if verdict(carrying([{"id": "a", "kind": "system"}])) == "met"

test_deficient if verdict(carrying([{"id": "a", "kind": "pipe"}])) == "deficient"

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
