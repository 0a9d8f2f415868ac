# METADATA
# title: The proposal says what is not included
# description: The damp wall or the unsafe flue that nobody was paid to touch should not be thought mended.
# custom:
#   subject: proposal
#   grade: required
#   stage: planned
#   remedy: List in the proposal what the work leaves out.
package policy.papers.proposal_limits

import rego.v2

subjects contains ["closeout", ["closeout", "proposal", "scope_limits"]]

met contains "closeout" if input.closeout.proposal.scope_limits == true

deficient contains ["closeout", ["closeout", "proposal", "scope_limits"]] if input.closeout.proposal.scope_limits == false
