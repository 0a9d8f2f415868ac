# METADATA
# title: Nobody spent more hours on site than the work lasted
# description: Hours decide what radon the log says a worker breathed; hours that cannot be make it worthless.
# custom:
#   subject: worker
#   grade: required
#   stage: closeout
#   remedy: Correct the hours or the days of the work.
package policy.physics.crew_hours

import rego.v2

subjects contains ["job", ["job", "crew"]] if not is_array(input.job.crew)

subjects contains [c.id, ["job", "crew", i, "hours_on_site"]] if some i, c in input.job.crew

met contains c.id if {
	some c in input.job.crew
	c.hours_on_site.si <= input.derived.order.work_span.si
}

deficient contains [c.id, ["job", "crew", i, "hours_on_site"]] if {
	some i, c in input.job.crew
	c.hours_on_site.si > input.derived.order.work_span.si
}

undetermined contains [c.id, ["job", "crew", i, "hours_on_site"], "hours and the days of the work are not both recorded"] if {
	some i, c in input.job.crew
	not is_number(c.hours_on_site.si)
}

undetermined contains [c.id, ["derived", "order", "work_span"], "hours and the days of the work are not both recorded"] if {
	some c in input.job.crew
	not is_number(input.derived.order.work_span.si)
}
