# METADATA
# title: The client signed the proposal
# description: A signature shows that the client saw what was going to happen to the house.
# custom:
#   subject: proposal
#   grade: recommended
#   stage: planned
#   remedy: Have the client sign before the work starts.
package policy.papers.proposal_signed

import rego.v2

subjects contains ["closeout", ["closeout", "proposal", "signed"]]

met contains "closeout" if input.closeout.proposal.signed == true

deficient contains ["closeout", ["closeout", "proposal", "signed"]] if input.closeout.proposal.signed == false
