# METADATA
# title: The survey looked at every place that matters
# description: The place nobody looked at is the one where the gas comes in, or where the drill meets a pipe.
# custom:
#   subject: item of the list
#   grade: required
#   stage: planned
#   remedy: Go back and look at what is left out.
#   limits:
#     items: {dimension: choice, sense: one-of}
package policy.survey.covers

import rego.v2

limits := data.profile.survey.covers
subjects contains ["diagnostics", ["diagnostics", "survey_covers"]] if not is_array(input.diagnostics.survey_covers)

subjects contains [item, ["diagnostics", "survey_covers"]] if {
	is_array(input.diagnostics.survey_covers)
	some item in limits.items.any_of
}

met contains item if {
	some item in limits.items.any_of
	item in input.diagnostics.survey_covers
}

deficient contains [item, path] if {
	is_array(input.diagnostics.survey_covers)
	some [item, path] in subjects
	not item in input.diagnostics.survey_covers
}
