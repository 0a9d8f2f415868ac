package policy.pipe.minimum_size_test

import data.policy.lib
import data.policy.pipe.minimum_size as rule
import rego.v2

# Inspection lists and a training text (no source: common practice): 3 in, with a
# downspout of 3 in x 4 in in its place outdoors; smaller pipe with readings and
# a written reason for the owner. IRC 2018 AF103.6.1 (from memory): 3 in.
profile := {"pipe": {"minimum_size": {"minimum": {"si": 0.0762}, "shapes": {"any_of": ["downspout-3x4"]}, "proof": {"any_of": ["airflow-basis"]}}}}

code := {"pipe": {"minimum_size": {"minimum": {"si": 0.0762}, "shapes": {"any_of": []}, "proof": {"any_of": []}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

round(size) := segment({"shape": "round", "nominal_size": {"si": size}})

proved(proof) := {"systems": [{
	"id": "s", "kind": "sub-slab", "commissioning": proof,
	"pipe": [{"id": "p", "above_ground": true, "shape": "round", "nominal_size": {"si": 0.0508}}],
}]}

test_met_at_exactly_three_inches if verdict(round(0.0762)) == "met"

test_met_with_a_large_downspout if verdict(segment({"shape": "downspout-3x4"})) == "met"

test_deficient_without_readings if verdict(proved({"airflow_basis_documented": false})) == "deficient"

test_met_with_readings if verdict(proved({"airflow_basis_documented": true})) == "met"

test_unrecorded_whether_there_are_readings if verdict(proved({})) == "unrecorded"

test_small_downspout_needs_readings if verdict(segment({"shape": "downspout-2x3"})) == "unrecorded"

test_says_where_it_is_too_narrow if {
	round := rule.deficient with input as proved({"airflow_basis_documented": false}) with data.profile as profile
	round == {["p", ["systems", 0, "pipe", 0, "nominal_size"], "minimum"]}
	flat := rule.deficient with input as segment({"shape": "downspout-2x3"}) with data.profile as code
	flat == {["p", ["systems", 0, "pipe", 0, "shape"], "minimum"]}
}

test_deficient_where_readings_are_no_excuse if {
	"deficient" == lib.verdict(rule, "p") with input as proved({"airflow_basis_documented": true}) with data.profile as code
}

# A round size beside a downspout says nothing of the downspout.
test_deficient_downspout_where_the_source_has_none if {
	job := segment({"shape": "downspout-3x4", "nominal_size": {"si": 0.1016}})
	"deficient" == lib.verdict(rule, "p") with input as job with data.profile as code
}

test_unrecorded_without_a_shape if verdict(segment({"nominal_size": {"si": 0.1016}})) == "unrecorded"

# SGM-SF 2017 (12/20) companion guidance 6.3: there is a floor, its figure was
# not read. An unknown limit decides nothing.
test_unknown_limit_decides_nothing if {
	unknown := {"pipe": {"minimum_size": {"minimum": {}, "shapes": {"any_of": []}, "proof": {"any_of": ["airflow-basis"]}}}}
	"unrecorded" == lib.verdict(rule, "p") with input as round(0.0762) with data.profile as unknown
}

test_unrecorded if verdict(segment({})) == "unrecorded"

test_not_applicable_below_the_slab if verdict(segment({"above_ground": false})) == "not-applicable"

test_unrecorded_without_a_list_of_pipe if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab"}]} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "pipe": [{"id": "p"}]}]} with data.profile as profile
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "pipe", 0, "above_ground"]],
		["p", ["systems", 0, "pipe", 0, "shape"]],
		["p", ["systems", 0, "pipe", 0, "nominal_size"]],
	}
}

test_says_that_readings_are_missing if {
	got := rule.missing with input as proved({}) with data.profile as profile
	got == {["p", ["systems", 0, "commissioning", "airflow_basis_documented"]]}
}
