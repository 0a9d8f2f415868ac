package policy.pipe.manifold_size_test

import data.policy.lib
import data.policy.pipe.manifold_size as rule
import rego.v2

# A training text on the older consensus practice (no source: common practice):
# 4 in where two or more suction points share the pipe, less with readings.
profile := {"pipe": {"manifold_size": {"minimum": {"si": 0.1016}, "points": {"si": 2}}}}

shared(feeds, pipe, proof) := {
	"systems": [{
		"id": "s", "kind": "sub-slab", "commissioning": proof,
		"pipe": [object.union({"id": "p", "above_ground": true, "shape": "round"}, pipe)],
	}],
	"derived": {"segments": [{"id": "p", "at": "/systems/0/pipe/0", "feeds": feeds}]},
}

segment(fields) := shared({"si": 2}, fields, {})

round(points, size, proof) := shared({"si": points}, {"nominal_size": {"si": size}}, proof)

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

test_met_at_exactly_four_inches if verdict(round(2, 0.1016, {})) == "met"

test_deficient_at_three if verdict(round(2, 0.0762, {"airflow_basis_documented": false})) == "deficient"

test_met_at_three_with_readings if verdict(round(3, 0.0762, {"airflow_basis_documented": true})) == "met"

test_unrecorded_whether_there_are_readings if verdict(round(2, 0.0762, {})) == "unrecorded"

test_not_applicable_to_a_single_leg if verdict(round(1, 0.0762, {})) == "not-applicable"

test_unrecorded_when_the_run_of_the_pipe_is_not_known if {
	verdict(shared({"undetermined": ["/systems/0/pipe/1/flows_into"]}, {"nominal_size": {"si": 0.0762}}, {})) == "unrecorded"
}

test_undetermined_for_downspouts if verdict(shared({"si": 2}, {"shape": "downspout-3x4"}, {})) == "undetermined"

test_unrecorded if verdict(segment({})) == "unrecorded"

test_not_applicable_below_the_slab if verdict(segment({"above_ground": false})) == "not-applicable"

test_unrecorded_without_a_list_of_pipe if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab"}]} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {
		"systems": [{"id": "s", "pipe": [{"id": "p"}]}],
		"derived": {"segments": [{"id": "p", "at": "/systems/0/pipe/0"}]},
	}
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "pipe", 0, "above_ground"]],
		["p", ["systems", 0, "pipe", 0, "shape"]],
		["p", ["systems", 0, "pipe", 0, "nominal_size"]],
		["p", ["derived", "segments", 0, "feeds"]],
	}
}

test_says_that_readings_are_missing if {
	some gap in rule.missing with input as round(2, 0.0762, {}) with data.profile as profile
	gap == ["p", ["systems", 0, "commissioning", "airflow_basis_documented"]]
}
