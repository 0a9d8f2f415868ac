package policy.pipe.vapor_riser_test

import data.policy.lib
import data.policy.pipe.vapor_riser as rule
import rego.v2

# 35 Ill. Adm. Code 742.1210(c)(1)(B): PVC of 3 in or more, sub-slab systems
# against chemical vapor.
profile := {"pipe": {"vapor_riser": {
	"minimum": {"si": 0.0762}, "materials": {"any_of": ["pvc"]},
	"kinds": {"any_of": ["sub-slab"]}, "contaminants": {"any_of": ["chemical-vapor", "both"]},
}}}

segment(fields) := {
	"job": {"contaminant": "chemical-vapor"},
	"systems": [{
		"id": "s", "kind": "sub-slab",
		"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
	}],
}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

riser(material, size) := segment({"run": "vertical", "material": material, "nominal_size": {"si": size}})

test_met_at_exactly_three_inches if verdict(riser("pvc", 0.0762)) == "met"

test_deficient_narrower if verdict(riser("pvc", 0.0508)) == "deficient"

test_deficient_of_another_plastic if verdict(riser("abs", 0.0762)) == "deficient"

test_not_applicable_to_level_pipe if verdict(segment({"run": "horizontal"})) == "not-applicable"

test_not_applicable_to_radon if {
	verdict({"job": {"contaminant": "radon"}, "systems": [{"id": "s", "kind": "sub-slab", "pipe": [{"id": "p", "above_ground": true}]}]}) == "not-applicable"
}

test_not_applicable_to_other_kinds if {
	verdict({"job": {"contaminant": "both"}, "systems": [{"id": "s", "kind": "sub-membrane", "pipe": [{"id": "p", "above_ground": true}]}]}) == "not-applicable"
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
		["p", ["systems", 0, "pipe", 0, "run"]],
		["p", ["systems", 0, "pipe", 0, "material"]],
		["p", ["systems", 0, "pipe", 0, "nominal_size"]],
		["p", ["job", "contaminant"]],
	}
}
