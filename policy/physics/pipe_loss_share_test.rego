package policy.physics.pipe_loss_share_test

import data.policy.lib
import data.policy.physics.pipe_loss_share as rule
import rego.v2

# common practice
profile := {"physics": {"pipe_loss_share": {"maximum": {"si": 0.5}}}}

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

test_met_at_the_limit if verdict(record({"pipe_loss_share": {"si": 0.5}})) == "met"

test_deficient if verdict(record({"pipe_loss_share": {"si": 0.51}})) == "deficient"

test_undetermined_by_a_computed_flow if verdict(unmeasured({"pipe_loss_share": {"si": 0.2}})) == "undetermined"

test_undetermined_when_it_does_not_follow if verdict(record({"pipe_loss_share": {}})) == "undetermined"

test_unrecorded if verdict(unmeasured({})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "derived": {"systems": [{"id": "s", "at": "/systems/0"}]}} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["derived", "systems", 0, "pipe_loss_share"]],
	}
}
