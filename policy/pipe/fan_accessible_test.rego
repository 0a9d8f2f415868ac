package policy.pipe.fan_accessible_test

import data.policy.lib
import data.policy.pipe.fan_accessible as rule
import rego.v2

# IRC 2018 AF103.8 (from memory): the vent can be reached for a later fan through
# the attic or another place outside habitable space.
stack(fields) := {"systems": [object.union({"id": "s", "kind": "sub-slab"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job

test_met if verdict(stack({"powered_by": "passive", "rough_in": {"fan_accessible": true}})) == "met"

test_deficient if verdict(stack({"powered_by": "rough-in", "rough_in": {"fan_accessible": false}})) == "deficient"

test_unrecorded if verdict(stack({"powered_by": "passive"})) == "unrecorded"

test_not_applicable_with_a_fan if verdict(stack({"powered_by": "fan"})) == "not-applicable"

test_not_applicable_to_ventilation if verdict({"systems": [{"id": "s", "kind": "pressurization"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "rough_in", "fan_accessible"]],
	}
}
