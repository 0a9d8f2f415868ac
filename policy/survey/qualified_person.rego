# METADATA
# title: A qualified person made the survey
# description: The danger that is overlooked on the first visit is the one that hurts the crew or the family later.
# custom:
#   subject: diagnostics
#   grade: required
#   stage: planned
#   remedy: Have a person with a mitigation credential go over the house.
#   limits:
#     kinds: {dimension: choice, sense: applies-to}
package policy.survey.qualified_person

import rego.v2

limits := data.profile.survey.qualified_person
subjects contains ["diagnostics", ["diagnostics", "surveyed_by"]]

met contains id if {
	some [id, _] in subjects
	some c in input.job.crew
	c.id == input.diagnostics.surveyed_by
	is_string(c.credential)
	c.credential_kind in limits.kinds.any_of
}

deficient contains [id, ["job", "crew", i, "credential_kind"], "kinds"] if {
	some [id, _] in subjects
	some i, c in input.job.crew
	c.id == input.diagnostics.surveyed_by
	is_string(c.credential_kind)
	not c.credential_kind in limits.kinds.any_of
}

missing contains [id, ["diagnostics", "surveyed_by"]] if {
	some [id, _] in subjects
	not is_string(input.diagnostics.surveyed_by)
}

missing contains [id, ["job", "crew", i, "credential"]] if {
	some [id, _] in subjects
	some i, c in input.job.crew
	c.id == input.diagnostics.surveyed_by
	not is_string(c.credential)
}

missing contains [id, ["job", "crew", i, "credential_kind"]] if {
	some [id, _] in subjects
	some i, c in input.job.crew
	c.id == input.diagnostics.surveyed_by
	not is_string(c.credential_kind)
}
