# METADATA
# title: The air that the crew works in stays below the level for steady work
# description: What is fine for an hour is too much for forty hours a week.
# custom:
#   subject: worker
#   grade: recommended
#   stage: running
#   remedy: Air the work area or start the fan before long work inside, and log the hours.
#   caution: Where airing does not help, use respirators that were fit-tested.
#   limits:
#     maximum: {dimension: radon, sense: at-most}
#     not_for: {dimension: choice, sense: not-for}
package policy.safety.level_worked_in

import rego.v2

limits := data.profile.safety.level_worked_in

subjects contains ["crew", ["job", "crew"]] if not is_array(input.job.crew)

subjects contains [c.id, ["job", "crew", i, "exposure_level"]] if some i, c in input.job.crew

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
	d.level.si <= limits.maximum.si
}

deficient contains [d.id, ["derived", "crew", i, "level"], "maximum"] if {
	some i, d in input.derived.crew
	d.id in workers
	d.level.si > limits.maximum.si
}

missing contains [c.id, ["job", "crew", i, "role"]] if {
	some i, c in input.job.crew
	not is_string(c.role)
}

missing contains [d.id, ["derived", "crew", i, "level"]] if {
	some i, d in input.derived.crew
	not is_number(d.level.si)
}
