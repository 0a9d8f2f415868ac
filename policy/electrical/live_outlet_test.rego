package policy.electrical.live_outlet_test

import data.policy.electrical.live_outlet as rule
import data.policy.lib
import rego.v2

# ANSI/AARST CCAH 2020 901.1(2): an outlet that is always live within 6 ft of the
# place of the fan, when a roughed-in pipe is activated.
profile := {"electrical": {"live_outlet": {"maximum": {"si": 1.8288}}}}

activated(electrical) := {
	"job": {"purpose": "activation-of-rough-in"},
	"systems": [{"id": "s", "kind": "sub-slab", "electrical": electrical}],
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_six_feet if verdict(activated({"outlet_distance": {"si": 1.8288}, "outlet_always_live": true})) == "met"

test_deficient_farther if verdict(activated({"outlet_distance": {"si": 1.83}, "outlet_always_live": true})) == "deficient"

test_deficient_behind_a_switch if verdict(activated({"outlet_distance": {"si": 1}, "outlet_always_live": false})) == "deficient"

test_unrecorded if verdict(activated({"outlet_distance": {"si": 1}})) == "unrecorded"

test_unrecorded_without_purpose if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "unrecorded"

test_not_applicable_to_new_systems if {
	verdict({"job": {"purpose": "new-installation"}, "systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"
}

test_not_applicable_to_ventilation if verdict({"systems": [{"id": "s", "kind": "heat-recovery-ventilation"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["job", "purpose"]],
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "electrical", "outlet_distance"]],
		["s", ["systems", 0, "electrical", "outlet_always_live"]],
	}
}
