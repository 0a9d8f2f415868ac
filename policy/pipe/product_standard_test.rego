package policy.pipe.product_standard_test

import data.policy.lib
import data.policy.pipe.product_standard as rule
import rego.v2

# SGM-SF 2017 (12/20) 6.2.5: (a) ABS to ASTM D2661, F628 or F1488; (b) PVC to
# ASTM D2665, F891 or F1488.
profile := {"pipe": {"product_standard": {
	"pvc": {"any_of": ["astm-d2665", "astm-f891", "astm-f1488"]},
	"abs": {"any_of": ["astm-d2661", "astm-f628", "astm-f1488"]},
}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

made(material, standard) := segment({"material": material, "standard": standard})

test_met_pvc if verdict(made("pvc", "astm-d2665")) == "met"

test_met_abs if verdict(made("abs", "astm-f628")) == "met"

test_deficient_thin_drain_pipe if verdict(made("pvc", "astm-d2729")) == "deficient"

test_deficient_abs_to_a_standard_for_pvc if verdict(made("abs", "astm-d2665")) == "deficient"

test_not_applicable_to_metal if verdict(segment({"material": "metal-downspout"})) == "not-applicable"

test_unrecorded_without_material if verdict(segment({"standard": "astm-d2729"})) == "unrecorded"

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
		["p", ["systems", 0, "pipe", 0, "standard"]],
	}
}
