# METADATA
# title: Every installer went through the protection plan within the last year
# description: People forget, and crews change; a plan read once is a plan nobody follows.
# custom:
#   subject: worker
#   grade: required
#   stage: planned
#   remedy: Go through the plan with this worker before the next day on site, and record the date.
#   limits:
#     age: {dimension: duration, sense: at-most}
#     not_for: {dimension: choice, sense: not-for}
package policy.safety.plan_reviewed

import rego.v2

limits := data.profile.safety.plan_reviewed

subjects contains ["crew", ["job", "crew"]] if not is_array(input.job.crew)

subjects contains [c.id, ["job", "crew", i, "plan_reviewed"]] if some i, c in input.job.crew

exempt contains [c.id, "people in this role do not install"] if {
	some c in input.job.crew
	c.role in limits.not_for.any_of
}

installers contains c.id if {
	some c in input.job.crew
	is_string(c.role)
	not c.role in limits.not_for.any_of
}

met contains d.id if {
	some d in input.derived.crew
	d.id in installers
	d.plan_age.si >= 0
	d.plan_age.si <= limits.age.si
}

deficient contains [d.id, ["derived", "crew", i, "plan_age"], "age"] if {
	some i, d in input.derived.crew
	d.id in installers
	d.plan_age.si > limits.age.si
}

undetermined contains [d.id, ["derived", "crew", i, "plan_age"], "the last review is later than the start of work"] if {
	some i, d in input.derived.crew
	d.id in installers
	d.plan_age.si < 0
}

missing contains [c.id, ["job", "crew", i, "role"]] if {
	some i, c in input.job.crew
	not is_string(c.role)
}

missing contains [d.id, ["derived", "crew", i, "plan_age"]] if {
	some i, d in input.derived.crew
	not is_number(d.plan_age.si)
}
