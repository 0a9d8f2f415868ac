# METADATA
# title: The proposal gives the price and the yearly running cost
# description: People switch off a fan whose bill surprises them.
# custom:
#   subject: proposal
#   grade: required
#   stage: planned
#   remedy: Add the installation price and an estimate of the yearly running cost.
package policy.papers.proposal_costs

import rego.v2

subjects contains ["closeout", ["closeout", "proposal", "costs"]]

met contains "closeout" if input.closeout.proposal.costs == true

deficient contains ["closeout", ["closeout", "proposal", "costs"]] if input.closeout.proposal.costs == false
