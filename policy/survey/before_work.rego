# METADATA
# title: The survey came before the work
# description: A survey written after the drilling tells what was done and not what was there.
# custom:
#   subject: job
#   grade: required
#   stage: planned
#   remedy: Survey first; if it was not done, look now at what was missed and note it.
#   limits:
#     least: {dimension: duration, sense: at-least}
package policy.survey.before_work

import rego.v2

limits := data.profile.survey.before_work
subjects contains ["job", ["derived", "order", "survey_before_work"]]

met contains id if {
	some [id, _] in subjects
	input.derived.order.survey_before_work.si >= limits.least.si
}

deficient contains [id, path, "least"] if {
	some [id, path] in subjects
	input.derived.order.survey_before_work.si < limits.least.si
}
