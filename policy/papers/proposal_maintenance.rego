# METADATA
# title: The proposal says what the owner has to look after
# description: A system that nobody watches stops protecting anyone on the day its fan stops.
# custom:
#   subject: proposal
#   grade: required
#   stage: planned
#   remedy: Say in the proposal what upkeep falls to the owner.
package policy.papers.proposal_maintenance

import rego.v2

subjects contains ["closeout", ["closeout", "proposal", "owner_maintenance"]]

met contains "closeout" if input.closeout.proposal.owner_maintenance == true

deficient contains ["closeout", ["closeout", "proposal", "owner_maintenance"]] if input.closeout.proposal.owner_maintenance == false
