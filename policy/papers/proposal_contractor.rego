# METADATA
# title: The proposal says who the contractor is, with credential number
# description: Whoever lets a stranger drill through the floor must be able to look the stranger up.
# custom:
#   subject: proposal
#   grade: required
#   stage: planned
#   remedy: Put name, address, phone and credential number on the proposal.
package policy.papers.proposal_contractor

import rego.v2

subjects contains ["closeout", ["closeout", "proposal", "contractor_id"]]

met contains "closeout" if input.closeout.proposal.contractor_id == true

deficient contains ["closeout", ["closeout", "proposal", "contractor_id"]] if input.closeout.proposal.contractor_id == false
