# METADATA
# title: The proposal promises to follow standards and codes
# description: Without it the client cannot hold the contractor to anything when the work falls short.
# custom:
#   subject: proposal
#   grade: required
#   stage: planned
#   remedy: State in the proposal which standards and codes the work follows.
package policy.papers.proposal_compliance

import rego.v2

subjects contains ["closeout", ["closeout", "proposal", "compliance_statement"]]

met contains "closeout" if input.closeout.proposal.compliance_statement == true

deficient contains ["closeout", ["closeout", "proposal", "compliance_statement"]] if input.closeout.proposal.compliance_statement == false
