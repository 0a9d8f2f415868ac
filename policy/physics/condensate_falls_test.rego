package policy.physics.condensate_falls_test

import data.policy.lib
import data.policy.physics.condensate_falls as rule
import rego.v2

# ANSI/AARST SGM-SF 2017 (12/20) 6.3.8: less than 2,000 fpm, so that condensed water
# is not drawn upward. 102.7 cfm in a true 3-in Schedule 40 bore.
profile := {"physics": {"condensate_falls": {"below": {"si": 10.16}}}}

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

test_met if verdict(record({"highest_velocity": {"si": 10.15}})) == "met"

test_deficient_at_the_limit if verdict(record({"highest_velocity": {"si": 10.16}})) == "deficient"

test_undetermined_by_a_computed_flow if verdict(unmeasured({"highest_velocity": {"si": 3}})) == "undetermined"

test_deficient_by_a_computed_flow if verdict(unmeasured({"highest_velocity": {"si": 12}})) == "deficient"

test_unrecorded if verdict(record({"highest_velocity": {}})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "derived": {"systems": [{"id": "s", "at": "/systems/0"}]}} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["derived", "systems", 0, "highest_velocity"]],
	}
}
