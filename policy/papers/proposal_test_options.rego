# METADATA
# title: The proposal says who can test afterwards, others than the contractor included
# description: A result from somebody who did not sell the system is easier to believe.
# custom:
#   subject: proposal
#   grade: required
#   stage: planned
#   remedy: List in the proposal the ways to have the house tested, by a third party too.
package policy.papers.proposal_test_options

import rego.v2

subjects contains ["closeout", ["closeout", "proposal", "test_options"]]

met contains "closeout" if input.closeout.proposal.test_options == true

deficient contains ["closeout", ["closeout", "proposal", "test_options"]] if input.closeout.proposal.test_options == false
