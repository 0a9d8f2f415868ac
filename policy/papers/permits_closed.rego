# METADATA
# title: Each permit was closed by its authority
# description: An open permit means that nobody independent has looked at the wiring that runs in the wall.
# custom:
#   subject: permit
#   grade: recommended
#   stage: closeout
#   remedy: Call for the final inspection and have the permit closed.
#   limits:
#     done: {dimension: choice, sense: one-of}
package policy.papers.permits_closed

import rego.v2

done := data.profile.papers.permits_closed.done.any_of

subjects contains ["job", ["job", "permits"]] if not is_array(input.job.permits)

subjects contains [p.id, ["job", "permits", i, "status"]] if some i, p in input.job.permits

met contains p.id if {
	some p in input.job.permits
	p.status in done
}

deficient contains [p.id, ["job", "permits", i, "status"], "done"] if {
	some i, p in input.job.permits
	is_string(p.status)
	not p.status in done
}
