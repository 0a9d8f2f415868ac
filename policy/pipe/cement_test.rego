package policy.pipe.cement_test

import data.policy.lib
import data.policy.pipe.cement as rule
import rego.v2

# SGM-SF 2017 (12/20) 6.2.5(a),(b): ASTM D2235 for ABS, ASTM D2564 for PVC.
profile := {"pipe": {"cement": {"pvc": {"any_of": ["astm-d2564"]}, "abs": {"any_of": ["astm-d2235"]}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

glued(material, cement) := segment({"material": material, "joints": "solvent-cemented", "cement_standard": cement})

test_met_pvc if verdict(glued("pvc", "astm-d2564")) == "met"

test_met_abs if verdict(glued("abs", "astm-d2235")) == "met"

test_deficient_pvc_with_the_other if verdict(glued("pvc", "astm-d2235")) == "deficient"

test_deficient_abs_with_the_other if verdict(glued("abs", "astm-d2564")) == "deficient"

test_deficient_with_none if verdict(glued("pvc", "none")) == "deficient"

test_not_applicable_to_couplings if verdict(segment({"material": "pvc", "joints": "flexible-coupling"})) == "not-applicable"

test_not_applicable_to_metal if verdict(segment({"material": "metal-downspout"})) == "not-applicable"

test_unrecorded_without_joints if verdict(segment({"material": "pvc", "cement_standard": "astm-d2564"})) == "unrecorded"

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
		["p", ["systems", 0, "pipe", 0, "material"]],
		["p", ["systems", 0, "pipe", 0, "joints"]],
		["p", ["systems", 0, "pipe", 0, "cement_standard"]],
	}
}
