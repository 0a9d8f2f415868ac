# METADATA
# title: The proposal says what will be done and when
# description: The people in the house plan around noise, dust and strangers in the basement, and later check what they paid for.
# custom:
#   subject: proposal
#   grade: required
#   stage: planned
#   remedy: Describe the work and its days in the proposal.
package policy.papers.proposal_scope

import rego.v2

subjects contains ["closeout", ["closeout", "proposal", "scope_and_time"]]

met contains "closeout" if input.closeout.proposal.scope_and_time == true

deficient contains ["closeout", ["closeout", "proposal", "scope_and_time"]] if input.closeout.proposal.scope_and_time == false
