# METADATA
# title: The proposal gives the terms of the warranty
# description: What is put right for free, and until when, is settled before the money changes hands.
# custom:
#   subject: proposal
#   grade: required
#   stage: planned
#   remedy: Put the terms of the warranty into the proposal.
package policy.papers.proposal_warranty

import rego.v2

subjects contains ["closeout", ["closeout", "proposal", "warranty_terms"]]

met contains "closeout" if input.closeout.proposal.warranty_terms == true

deficient contains ["closeout", ["closeout", "proposal", "warranty_terms"]] if input.closeout.proposal.warranty_terms == false
