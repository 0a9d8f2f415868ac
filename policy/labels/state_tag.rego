# METADATA
# title: The system carries the tag of the state, and its number is recorded
# description: The number ties house, installer and test result together in the register of the state.
# custom:
#   subject: system
#   grade: required
#   stage: closeout
#   remedy: Get the tag from the state, fix it and write its number into the record.
#   limits:
#     since: {dimension: date, sense: at-least}
package policy.labels.state_tag

import data.policy.marks
import data.policy.systems
import rego.v2

since := data.profile.labels.state_tag.since.si

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "labels"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "the system is older than the tags"] if {
	some s in input.systems
	input.job.purpose == "inspection"
	input.job.existing_system.installed.si < since
}

judged contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	is_string(input.job.purpose)
	input.job.purpose != "inspection"
}

judged contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	input.job.existing_system.installed.si >= since
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	some l in s.labels
	l.kind == "state-tag"
	is_string(l.tag_number)
}

deficient contains [s.id, ["systems", i, "labels"]] if {
	some i, s in input.systems
	s.id in judged
	s.id in marks.known
	count({l.id | some l in s.labels; l.kind == "state-tag"}) == 0
}

missing contains gap if some gap in systems.unsaid

missing contains gap if some gap in marks.untold

missing contains [s.id, ["job", "purpose"]] if {
	some s in input.systems
	not is_string(input.job.purpose)
}

missing contains [s.id, ["job", "existing_system", "installed"]] if {
	some s in input.systems
	input.job.purpose == "inspection"
	not is_number(input.job.existing_system.installed.si)
}

missing contains [s.id, ["systems", i, "labels", j, "tag_number"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "state-tag"
	not is_string(l.tag_number)
}
