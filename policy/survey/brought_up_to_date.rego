# METADATA
# title: An older system that was altered was brought to the current rules, with an estimate in writing
# description: Half an old system under half a new one leaves the family with the faults of both.
# custom:
#   subject: job
#   grade: required
#   stage: closeout
#   remedy: Bring the whole system to the current rules, and give the client the estimate for it in writing.
#   limits:
#     worn_parts: {dimension: choice, sense: one-of}
package policy.survey.brought_up_to_date

import rego.v2

limits := data.profile.survey.brought_up_to_date
subjects contains ["job", ["job", "existing_system", "brought_up_to_date"]]

exempt contains [id, "a job of this purpose alters no older system"] if {
	some [id, _] in subjects
	input.job.purpose in {"new-installation", "temporary-system", "inspection"}
}

exempt contains [id, "only worn parts were replaced"] if {
	some [id, _] in subjects
	is_array(input.job.existing_system.parts_altered)
	not altered
}

altered if {
	some part in input.job.existing_system.parts_altered
	not part in limits.worn_parts.any_of
}

asked if {
	input.job.purpose in {"repair", "fan-replacement", "activation-of-rough-in"}
	altered
}

met contains id if {
	asked
	some [id, _] in subjects
	input.job.existing_system.brought_up_to_date == true
	input.job.existing_system.upgrade_estimate_given == true
}

deficient contains [id, ["job", "existing_system", "brought_up_to_date"]] if {
	asked
	some [id, _] in subjects
	input.job.existing_system.brought_up_to_date == false
}

deficient contains [id, ["job", "existing_system", "upgrade_estimate_given"]] if {
	asked
	some [id, _] in subjects
	input.job.existing_system.upgrade_estimate_given == false
}

missing contains [id, ["job", "purpose"]] if {
	some [id, _] in subjects
	not is_string(input.job.purpose)
}

missing contains [id, ["job", "existing_system", "parts_altered"]] if {
	some [id, _] in subjects
	not is_array(input.job.existing_system.parts_altered)
}

missing contains [id, ["job", "existing_system", "brought_up_to_date"]] if {
	some [id, _] in subjects
	not is_boolean(input.job.existing_system.brought_up_to_date)
}

missing contains [id, ["job", "existing_system", "upgrade_estimate_given"]] if {
	some [id, _] in subjects
	not is_boolean(input.job.existing_system.upgrade_estimate_given)
}
