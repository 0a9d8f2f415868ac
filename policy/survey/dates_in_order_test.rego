package policy.survey.dates_in_order_test

import data.policy.lib
import data.policy.survey.dates_in_order as rule
import rego.v2

# common practice: proposal, work, completion, handover.
profile := {"survey": {"dates_in_order": {"least": {"si": 0}}}}

in_order := {
	"proposal_before_work": {"si": 950400}, "work_before_completion": {"si": 0},
	"completion_before_handover": {"si": 864000}, "fan_start_before_handover": {"si": 864000},
}

verdict(values) := v if v := lib.verdict(rule, "job") with input as {"derived": {"order": values}} with data.profile as profile

changed(field) := object.union(in_order, {field: {"si": -86400}})

test_met if verdict(in_order) == "met"

test_deficient_proposal_before_work if verdict(changed("proposal_before_work")) == "deficient"

test_deficient_work_before_completion if verdict(changed("work_before_completion")) == "deficient"

test_deficient_completion_before_handover if verdict(changed("completion_before_handover")) == "deficient"

test_deficient_fan_start_before_handover if verdict(changed("fan_start_before_handover")) == "deficient"

test_unrecorded if verdict(object.remove(in_order, ["work_before_completion"])) == "unrecorded"

# Where no fan drives a system none is started.
test_met_without_a_fan if {
	passive := {"systems": [{"id": "s", "powered_by": "passive"}]}
	never := object.union(passive, {"derived": {"order": object.remove(in_order, ["fan_start_before_handover"])}})
	"met" == lib.verdict(rule, "job") with input as never with data.profile as profile
	got := rule.missing with input as never with data.profile as profile
	count(got) == 0
	meant_for_later := object.union(passive, {"derived": {"order": changed("fan_start_before_handover")}})
	"met" == lib.verdict(rule, "job") with input as meant_for_later with data.profile as profile
	late := rule.deficient with input as meant_for_later with data.profile as profile
	count(late) == 0
}

test_unrecorded_start_of_a_fan if verdict(object.remove(in_order, ["fan_start_before_handover"])) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {} with data.profile as profile
	got == {["job", ["derived", "order", field]] | some field in object.keys(in_order)}
}
