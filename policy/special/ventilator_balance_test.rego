package policy.special.ventilator_balance_test

import data.policy.lib
import data.policy.special.ventilator_balance as rule
import rego.v2

# EPA RMS 1994 14.8.5 (from memory): flows balanced, the house not pulled negative.
# Within a tenth: common practice.
profile := {"special": {"ventilator_balance": {
	"kinds": {"any_of": ["heat-recovery-ventilation"]},
	"least": {"si": -0.1}, "most": {"si": 0.1},
}}}

blowing(imbalance) := {
	"systems": [{"id": "s", "kind": "heat-recovery-ventilation"}],
	"derived": {"systems": [{"id": "s", "at": "/systems/0", "ventilation_imbalance": imbalance}]},
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(blowing({"si": 0})) == "met"

test_met_at_exactly_a_tenth_less if verdict(blowing({"si": -0.1})) == "met"

test_met_at_exactly_a_tenth_more if verdict(blowing({"si": 0.1})) == "met"

test_deficient_pulling if verdict(blowing({"si": -0.11})) == "deficient"

test_deficient_pushing if verdict(blowing({"si": 0.11})) == "deficient"

test_unrecorded if verdict(blowing({"undetermined": ["/systems/0/ventilation/supply_flow"]})) == "unrecorded"

test_unrecorded_kind if {
	verdict({
		"systems": [{"id": "s"}],
		"derived": {"systems": [{"id": "s", "at": "/systems/0", "ventilation_imbalance": {"si": 0}}]},
	}) == "unrecorded"
}

test_not_applicable_to_other_systems if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "ventilation", "supply_flow"]],
		["s", ["systems", 0, "ventilation", "exhaust_flow"]],
	}
}
