# METADATA
# title: No worker passes the radon exposure allowed in twelve months
# description: Lung cancer follows the sum of what was breathed, and this trade breathes the worst air of every house.
# custom:
#   subject: worker
#   grade: hazard
#   stage: running
#   remedy: Keep this worker out of high houses until twelve months add up to less, and air the work area first.
#   caution: Start the fan, or open the house, before long work inside.
#   limits:
#     maximum: {dimension: exposure, sense: at-most}
#     not_for: {dimension: choice, sense: not-for}
package policy.safety.yearly_exposure

import rego.v2

limits := data.profile.safety.yearly_exposure

subjects contains ["crew", ["job", "crew"]] if not is_array(input.job.crew)

subjects contains [c.id, ["job", "crew", i, "exposure_past_year"]] if some i, c in input.job.crew

exempt contains [c.id, "people in this role do not work in the house"] if {
	some c in input.job.crew
	c.role in limits.not_for.any_of
}

workers contains c.id if {
	some c in input.job.crew
	is_string(c.role)
	not c.role in limits.not_for.any_of
}

met contains d.id if {
	some d in input.derived.crew
	d.id in workers
	d.past_year.si <= limits.maximum.si
}

deficient contains [d.id, ["derived", "crew", i, "past_year"], "maximum"] if {
	some i, d in input.derived.crew
	d.id in workers
	d.past_year.si > limits.maximum.si
}

missing contains [c.id, ["job", "crew", i, "role"]] if {
	some i, c in input.job.crew
	not is_string(c.role)
}

missing contains [d.id, ["derived", "crew", i, "past_year"]] if {
	some i, d in input.derived.crew
	not is_number(d.past_year.si)
}
