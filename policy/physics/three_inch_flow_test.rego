package policy.physics.three_inch_flow_test

import data.policy.lib
import data.policy.physics.three_inch_flow as rule
import rego.v2

# RMS-LB 2018 (12/20) 6.3, family text: over 80 cfm in the whole system, 4-in pipe.
profile := {"physics": {"three_inch_flow": {"size": {"si": 0.1016}, "maximum": {"si": 0.03775579584}}}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

record(values) := {
	"house": {"altitude": {"si": 300}},
	"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": {"rain_cap": false},
		"commissioning": {"measured_flow": {"si": 0.03}},
	}],
	"derived": {"systems": [object.union({"id": "s", "at": "/systems/0"}, values)]},
}

unmeasured(values) := {
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"derived": {"systems": [object.union({"id": "s", "at": "/systems/0"}, values)]},
}

pipe(size, flow) := {"smallest_main_bore": {"si": size}, "flow_used": {"si": flow}}

test_met_at_the_limit if verdict(record(pipe(0.05, 0.03775579584))) == "met"

test_met_with_wider_pipe if verdict(unmeasured(pipe(0.1016, 1))) == "met"

test_deficient if verdict(record(pipe(0.05, 0.03775579584 + 0.001))) == "deficient"

test_undetermined_by_a_computed_flow if verdict(unmeasured(pipe(0.05, 0.001))) == "undetermined"

test_undetermined_without_a_flow if verdict(unmeasured({"smallest_main_bore": {"si": 0.05}})) == "undetermined"

test_unrecorded if verdict(record({})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "derived": {"systems": [{"id": "s", "at": "/systems/0"}]}} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["derived", "systems", 0, "smallest_main_bore"]],
		["s", ["derived", "systems", 0, "flow_used"]],
	}
}
