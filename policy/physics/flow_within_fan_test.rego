package policy.physics.flow_within_fan_test

import data.policy.lib
import data.policy.physics.flow_within_fan as rule
import rego.v2

# common practice: no fan moves more than with nothing before it.
verdict(job) := v if v := lib.verdict(rule, "s") with input as job

record(flow, curve) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan", "fan": {"curve": curve},
	"commissioning": {"measured_flow": flow},
}]}

curve := [{"flow": {"si": 0}, "pressure": {"si": 400}}, {"flow": {"si": 0.08}, "pressure": {"si": 0}}]

test_met_at_free_delivery if verdict(record({"si": 0.08}, curve)) == "met"

test_deficient_beyond if verdict(record({"si": 0.0801}, curve)) == "deficient"

test_of_two_ends_the_larger_counts if {
	ends := array.concat(curve, [{"flow": {"si": 0.1}, "pressure": {"si": 0}}])
	verdict(record({"si": 0.09}, ends)) == "met"
	verdict(record({"si": 0.11}, ends)) == "deficient"
	got := rule.deficient with input as record({"si": 0.09}, ends)
	count(got) == 0
}

test_undetermined_without_a_flow if verdict(record({}, curve)) == "undetermined"

test_undetermined_without_the_end_of_the_curve if verdict(record({"si": 0.08}, [curve[0]])) == "undetermined"

test_unrecorded if verdict({"systems": [{"id": "s"}]}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	["s", ["systems", 0, "kind"]] in got
}

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}
