package policy.survey.finished_system_inspected_test

import data.policy.lib
import data.policy.survey.finished_system_inspected as rule
import rego.v2

# SGM-SF 2017 (12/20) 8.5: inspected by a qualified professional before release,
# defects fixed.
profile := {"survey": {"finished_system_inspected": {"kinds": {"any_of": ["mitigation"]}}}}

done := {"inspected": true, "defects_fixed": true, "inspected_by": "lead"}

lead := {"id": "lead", "credential": "RM-5521", "credential_kind": "mitigation"}

job(commissioning, person) := {"job": {"crew": [person]}, "systems": [{"id": "s", "commissioning": commissioning}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(job(done, lead)) == "met"

test_deficient_without_inspection if verdict(job(object.union(done, {"inspected": false}), lead)) == "deficient"

test_deficient_with_defects_left if verdict(job(object.union(done, {"defects_fixed": false}), lead)) == "deficient"

test_deficient_by_somebody_else if verdict(job(done, object.union(lead, {"credential_kind": "electrical"}))) == "deficient"

test_unrecorded if verdict({"systems": [{"id": "s"}]}) == "unrecorded"

test_unrecorded_without_the_credential if verdict(job(done, {"id": "lead"})) == "unrecorded"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	nothing := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	nothing == {
		["s", ["systems", 0, "commissioning", "inspected"]],
		["s", ["systems", 0, "commissioning", "defects_fixed"]],
		["s", ["systems", 0, "commissioning", "inspected_by"]],
	}
	person := rule.missing with input as job(done, {"id": "lead"}) with data.profile as profile
	person == {
		["s", ["job", "crew", 0, "credential"]],
		["s", ["job", "crew", 0, "credential_kind"]],
	}
}
