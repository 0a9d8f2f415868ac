package policy.electrical.box_provided_test

import data.policy.electrical.box_provided as rule
import data.policy.lib
import rego.v2

# IRC 2018 AF103.12 (from memory): a circuit that ends in an approved box in the
# attic or another expected place of the fan.
stack(fields) := {"systems": [object.union({"id": "s", "kind": "sub-slab"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job

test_met if verdict(stack({"powered_by": "passive", "electrical": {"box_provided": true}})) == "met"

test_deficient if verdict(stack({"powered_by": "rough-in", "electrical": {"box_provided": false}})) == "deficient"

test_unrecorded if verdict(stack({"powered_by": "passive"})) == "unrecorded"

test_not_applicable_with_a_fan if verdict(stack({"powered_by": "fan"})) == "not-applicable"

test_not_applicable_to_ventilation if verdict({"systems": [{"id": "s", "kind": "crawlspace-ventilation"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "electrical", "box_provided"]],
	}
}
