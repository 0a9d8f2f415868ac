package policy.physics.operating_point_test

import data.policy.lib
import data.policy.physics.operating_point as rule
import rego.v2

# common practice
verdict(job) := v if v := lib.verdict(rule, "s") with input as job

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

test_met if verdict(record({"operating_state": "crosses"})) == "met"

test_deficient_beyond_free_delivery if verdict(record({"operating_state": "beyond-free-delivery"})) == "deficient"

test_deficient_above_shutoff if verdict(record({"operating_state": "above-shut-off"})) == "deficient"

test_unrecorded_without_the_ground if verdict(record({})) == "unrecorded"

test_unrecorded_without_the_altitude if verdict(unmeasured({"operating_state": "crosses"})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "derived": {"systems": [{"id": "s", "at": "/systems/0"}]}}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["house", "altitude"]],
		["s", ["systems", 0, "discharge", "rain_cap"]],
		["s", ["derived", "systems", 0, "operating_flow"]],
	}
}
