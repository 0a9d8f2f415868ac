# METADATA
# title: The client had the written proposal before the work started
# description: A paper that comes after the drilling leaves the owner nothing to decide.
# custom:
#   subject: proposal
#   grade: required
#   stage: roughed-in
#   remedy: Give the written proposal first; if the dates are wrong, correct them.
#   limits:
#     least: {dimension: duration, sense: at-least}
package policy.papers.proposal_before_work

import rego.v2

least := data.profile.papers.proposal_before_work.least.si

subjects contains ["closeout", ["derived", "order", "proposal_before_work"]]

met contains "closeout" if input.derived.order.proposal_before_work.si >= least

deficient contains ["closeout", ["derived", "order", "proposal_before_work"], "least"] if {
	input.derived.order.proposal_before_work.si < least
}
