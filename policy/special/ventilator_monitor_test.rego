package policy.special.ventilator_monitor_test

import data.policy.lib
import data.policy.special.ventilator_monitor as rule
import rego.v2

# CAN/CGSB-149.12, scope of the coming edition (from memory): continuous monitoring where ventilation is the method.
profile := {"special": {"ventilator_monitor": {"kinds": {"any_of": ["heat-recovery-ventilation"]}}}}

made(parts) := {"systems": [object.union({"id": "s", "kind": "heat-recovery-ventilation"}, parts)]}

full := {"ventilation": {"continuous_monitor": true}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(made(full)) == "met"

test_deficient_continuous_monitor if verdict(made(object.union(full, {"ventilation": {"continuous_monitor": false}}))) == "deficient"

test_unrecorded_continuous_monitor if verdict(made(json.remove(full, ["ventilation/continuous_monitor"]))) == "unrecorded"

test_unrecorded_kind if verdict({"systems": [object.union({"id": "s"}, full)]}) == "unrecorded"

test_not_applicable_to_other_systems if verdict({"systems": [{"id": "s", "kind": "baseboard-channel"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "ventilation", "continuous_monitor"]],
	}
}
