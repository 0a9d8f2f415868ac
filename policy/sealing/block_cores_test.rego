package policy.sealing.block_cores_test

import data.policy.lib
import data.policy.sealing.block_cores as rule
import rego.v2

# Common practice: open cores are closed wherever they can be reached.
profile := {"sealing": {"block_cores": {"treatments": {"any_of": ["sealed", "closed"]}}}}

core(fields) := {"entry_routes": [object.union({"id": "r", "kind": "block-core"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "r") with input as job with data.profile as profile

test_met if verdict(core({"treatment": "sealed"})) == "met"

test_deficient if verdict(core({"treatment": "left-open"})) == "deficient"

test_unrecorded if verdict(core({})) == "unrecorded"

test_not_applicable_out_of_reach if verdict(core({"treatment": "not-reachable"})) == "not-applicable"

test_unrecorded_kind if {
	"unrecorded" == lib.verdict(rule, "x") with input as {"entry_routes": [{"id": "x"}]} with data.profile as profile
}

test_other_openings_are_no_subject if {
	got := rule.subjects with input as {"entry_routes": [{"id": "crack", "kind": "crack"}]}
	count(got) == 0
}
