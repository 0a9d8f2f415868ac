package policy.physics.two_inch_flow_test

import data.policy.lib
import data.policy.physics.two_inch_flow as rule
import rego.v2

# RMS-LB 2018 (12/20) 6.3, family text: 2-in pipe at 40 cfm or less for the entire
# system, otherwise 3-in.
profile := {"physics": {"two_inch_flow": {"size": {"si": 0.0762}, "maximum": {"si": 0.01887789792}}}}

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

pipe(size, flow) := {"smallest_bore": {"si": size}, "flow_used": {"si": flow}}

test_met_at_the_limit if verdict(record(pipe(0.05, 0.01887789792))) == "met"

test_met_with_wider_pipe if verdict(unmeasured(pipe(0.0762, 1))) == "met"

test_deficient if verdict(record(pipe(0.05, 0.01887789792 + 0.001))) == "deficient"

test_undetermined_by_a_computed_flow if verdict(unmeasured(pipe(0.05, 0.001))) == "undetermined"

test_undetermined_without_a_flow if verdict(unmeasured({"smallest_bore": {"si": 0.05}})) == "undetermined"

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
		["s", ["derived", "systems", 0, "smallest_bore"]],
		["s", ["derived", "systems", 0, "flow_used"]],
	}
}
