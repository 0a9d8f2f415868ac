package policy.pipe.primer_test

import data.policy.lib
import data.policy.pipe.primer as rule
import rego.v2

# SGM-SF 2017 (12/20) 6.2.5(b): a primer standard for PVC; that it is ASTM F656
# is from memory.
profile := {"pipe": {"primer": {"pvc": {"any_of": ["astm-f656"]}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

primed(primer) := segment({"material": "pvc", "joints": "solvent-cemented", "primer_standard": primer})

test_met if verdict(primed("astm-f656")) == "met"

test_deficient if verdict(primed("none")) == "deficient"

test_not_applicable_to_abs if verdict(segment({"material": "abs", "joints": "solvent-cemented", "primer_standard": "none"})) == "not-applicable"

test_not_applicable_to_couplings if verdict(segment({"material": "pvc", "joints": "flexible-coupling"})) == "not-applicable"

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
		["p", ["systems", 0, "pipe", 0, "primer_standard"]],
	}
}
