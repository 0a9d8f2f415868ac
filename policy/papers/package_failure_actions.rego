# METADATA
# title: The package says what to do when the warning device shows failure
# description: An alarm that nobody knows how to answer gets unplugged.
# custom:
#   subject: closeout package
#   grade: required
#   stage: closeout
#   remedy: Write down what to do, and whom to call, when gauge or alarm shows failure.
package policy.papers.package_failure_actions

import rego.v2

subjects contains ["closeout", ["closeout", "package", "failure_actions"]]

met contains "closeout" if input.closeout.package.failure_actions == true

deficient contains ["closeout", ["closeout", "package", "failure_actions"]] if input.closeout.package.failure_actions == false
