# METADATA
# title: The proposal says whether a radon level is promised
# description: Families take it for granted that the level will be low; they must know whether anybody stands by that.
# custom:
#   subject: proposal
#   grade: required
#   stage: planned
#   remedy: State in the proposal that a level is promised, or that none is.
package policy.papers.proposal_level

import rego.v2

subjects contains ["closeout", ["closeout", "proposal", "level_promise_stated"]]

met contains "closeout" if input.closeout.proposal.level_promise_stated == true

deficient contains ["closeout", ["closeout", "proposal", "level_promise_stated"]] if input.closeout.proposal.level_promise_stated == false
