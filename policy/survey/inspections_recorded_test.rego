package policy.survey.inspections_recorded_test

import data.policy.lib
import data.policy.survey.inspections_recorded as rule
import rego.v2

# SGM-SF 2023, as summarised in the publisher's newsletter (from memory): records of
# inspection before design, after installation, and of oversight.
job(design, oversight) := {
	"systems": [{"id": "s", "commissioning": {"inspected_on": {"si": 1773705600}}}],
	"closeout": {"records": {"design_inspection": design, "oversight_recorded": oversight}},
}

verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

test_met if verdict(job(true, true)) == "met"

test_deficient_without_design if verdict(job(false, true)) == "deficient"

test_deficient_without_oversight if verdict(job(true, false)) == "deficient"

test_unrecorded_without_the_day_of_inspection if {
	verdict(object.union(job(true, true), {"systems": [{"id": "s"}]})) == "unrecorded"
}

test_unrecorded if verdict({}) == "unrecorded"

test_says_what_is_missing if {
	nothing := rule.missing with input as {}
	nothing == {
		["closeout", ["closeout", "records", "design_inspection"]],
		["closeout", ["closeout", "records", "oversight_recorded"]],
		["closeout", ["systems"]],
	}
	day := rule.missing with input as object.union(job(true, true), {"systems": [{"id": "s"}]})
	day == {["closeout", ["systems", 0, "commissioning", "inspected_on"]]}
}
