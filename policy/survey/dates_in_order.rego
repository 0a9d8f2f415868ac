# METADATA
# title: Proposal, work, completion and handover follow each other
# description: A record whose dates run backwards was filled in from memory, and the rest of it may be too.
# custom:
#   subject: job
#   grade: recommended
#   stage: closeout
#   remedy: Look the dates up and correct the record.
#   limits:
#     least: {dimension: duration, sense: at-least}
package policy.survey.dates_in_order

import data.policy.systems
import rego.v2

limits := data.profile.survey.dates_in_order
subjects contains ["job", ["job", "dates"]]

met contains id if {
	some [id, _] in subjects
	input.derived.order.proposal_before_work.si >= limits.least.si
	input.derived.order.work_before_completion.si >= limits.least.si
	input.derived.order.completion_before_handover.si >= limits.least.si
	fan_in_order
}

fan_in_order if input.derived.order.fan_start_before_handover.si >= limits.least.si

fan_in_order if systems.no_fan

deficient contains [id, ["derived", "order", "proposal_before_work"], "least"] if {
	some [id, _] in subjects
	input.derived.order.proposal_before_work.si < limits.least.si
}

deficient contains [id, ["derived", "order", "work_before_completion"], "least"] if {
	some [id, _] in subjects
	input.derived.order.work_before_completion.si < limits.least.si
}

deficient contains [id, ["derived", "order", "completion_before_handover"], "least"] if {
	some [id, _] in subjects
	input.derived.order.completion_before_handover.si < limits.least.si
}

deficient contains [id, ["derived", "order", "fan_start_before_handover"], "least"] if {
	some [id, _] in subjects
	not systems.no_fan
	input.derived.order.fan_start_before_handover.si < limits.least.si
}

missing contains [id, ["derived", "order", "proposal_before_work"]] if {
	some [id, _] in subjects
	not is_number(input.derived.order.proposal_before_work.si)
}

missing contains [id, ["derived", "order", "work_before_completion"]] if {
	some [id, _] in subjects
	not is_number(input.derived.order.work_before_completion.si)
}

missing contains [id, ["derived", "order", "completion_before_handover"]] if {
	some [id, _] in subjects
	not is_number(input.derived.order.completion_before_handover.si)
}

missing contains [id, ["derived", "order", "fan_start_before_handover"]] if {
	some [id, _] in subjects
	not systems.no_fan
	not is_number(input.derived.order.fan_start_before_handover.si)
}
