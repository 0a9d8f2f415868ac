package policy.physics.quiet_outlet_test

import data.policy.lib
import data.policy.physics.quiet_outlet as rule
import rego.v2

# ANSI/AARST SGM-SF 2017 (12/20) 6.3.8: at about 1,600 fpm or faster the rush of air
# becomes objectionable at the outlet; 80 cfm in a 3-in pipe.
profile := {"physics": {"quiet_outlet": {"below": {"si": 8.128}}}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

record(values) := {
	"house": {"altitude": {"si": 300}},
	"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": {"rain_cap": false},
		"commissioning": {"measured_flow": {"si": 0.03}},
	}],
	"derived": {"discharges": [object.union({"id": "s", "at": "/systems/0"}, values)]},
}

unmeasured(values) := {
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"derived": {"discharges": [object.union({"id": "s", "at": "/systems/0"}, values)]},
}

test_met if verdict(record({"exit_velocity": {"si": 8.118}})) == "met"

test_deficient_at_the_limit if verdict(record({"exit_velocity": {"si": 8.128}})) == "deficient"

test_undetermined_by_a_computed_flow if verdict(unmeasured({"exit_velocity": {"si": 3}})) == "undetermined"

test_deficient_by_a_computed_flow if verdict(unmeasured({"exit_velocity": {"si": 12}})) == "deficient"

test_unrecorded if verdict(record({"exit_velocity": {}})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "derived": {"discharges": [{"id": "s", "at": "/systems/0"}]}} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["derived", "discharges", 0, "exit_velocity"]],
	}
}
