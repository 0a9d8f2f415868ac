package policy.diagnostics.seals_rechecked_test

import data.policy.diagnostics.seals_rechecked as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 17.1 (from memory): fan seals and indoor joints are checked again after
# the start.
job(answer) := {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "fan": {"seals_rechecked": answer}}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job

test_met if verdict(job(true)) == "met"

test_deficient if verdict(job(false)) == "deficient"

test_unrecorded if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}]}) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if "unrecorded" == lib.verdict(rule, "systems") with input as {}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "fan", "seals_rechecked"]],
	}
}
