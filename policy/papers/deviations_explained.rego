# METADATA
# title: Each departure from the standard is written down with its reason
# description: A reason on paper tells a shortcut from a decision.
# custom:
#   subject: departure
#   grade: required
#   stage: closeout
#   remedy: Write what departs from the standard or where codes conflict, and why it was done so.
#   limits:
#     no_reason: {dimension: choice, sense: none-of}
package policy.papers.deviations_explained

import rego.v2

no_reason := data.profile.papers.deviations_explained.no_reason.any_of

subjects contains ["closeout", ["closeout", "deviations"]] if not is_array(input.closeout.deviations)

subjects contains [d.id, ["closeout", "deviations", i, "reason"]] if some i, d in input.closeout.deviations

met contains d.id if {
	some d in input.closeout.deviations
	is_string(d.what)
	is_string(d.reason)
	not lower(d.reason) in no_reason
	is_array(no_reason)
}

deficient contains [d.id, ["closeout", "deviations", i, "reason"], "no_reason"] if {
	some i, d in input.closeout.deviations
	lower(d.reason) in no_reason
}

missing contains [d.id, ["closeout", "deviations", i, "what"]] if {
	some i, d in input.closeout.deviations
	not is_string(d.what)
}

missing contains [d.id, ["closeout", "deviations", i, "reason"]] if {
	some i, d in input.closeout.deviations
	not is_string(d.reason)
}
