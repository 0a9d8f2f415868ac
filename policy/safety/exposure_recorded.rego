# METADATA
# title: The exposure of each worker at this site is recorded
# description: A worker breathes the worst air of many houses; only the sum shows when it is too much.
# custom:
#   subject: worker
#   grade: required
#   stage: running
#   remedy: Enter hours and level of this site in the log of the worker.
#   limits:
#     not_for: {dimension: choice, sense: not-for}
package policy.safety.exposure_recorded

import rego.v2

not_for := data.profile.safety.exposure_recorded.not_for.any_of

subjects contains ["crew", ["job", "crew"]] if not is_array(input.job.crew)

subjects contains [c.id, ["job", "crew", i, "exposure_recorded"]] if some i, c in input.job.crew

exempt contains [c.id, "people in this role do not work in the house"] if {
	some c in input.job.crew
	c.role in not_for
}

met contains c.id if {
	some c in input.job.crew
	is_string(c.role)
	not c.role in not_for
	c.exposure_recorded == true
}

deficient contains [c.id, ["job", "crew", i, "exposure_recorded"]] if {
	some i, c in input.job.crew
	is_string(c.role)
	not c.role in not_for
	c.exposure_recorded == false
}

missing contains [c.id, ["job", "crew", i, "role"]] if {
	some i, c in input.job.crew
	not is_string(c.role)
}

missing contains [c.id, ["job", "crew", i, "exposure_recorded"]] if {
	some i, c in input.job.crew
	not is_boolean(c.exposure_recorded)
}
