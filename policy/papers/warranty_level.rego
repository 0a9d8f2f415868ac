# METADATA
# title: The warranty says whether a radon level is promised
# description: Families rely on a promise that may never have been made.
# custom:
#   subject: warranty
#   grade: required
#   stage: closeout
#   remedy: State in the warranty which level is promised, or that none is.
package policy.papers.warranty_level

import rego.v2

subjects contains ["closeout", ["closeout", "warranty", "states_level"]]

met contains "closeout" if input.closeout.warranty.states_level == true

deficient contains ["closeout", ["closeout", "warranty", "states_level"]] if input.closeout.warranty.states_level == false
