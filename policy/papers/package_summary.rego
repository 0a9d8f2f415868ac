# METADATA
# title: The package holds the summary of the investigation with a floor sketch
# description: Whoever works on the house next has to know where the pipe, the holes and the drains are.
# custom:
#   subject: closeout package
#   grade: required
#   stage: closeout
#   remedy: Add the summary and the sketch to the package.
package policy.papers.package_summary

import rego.v2

subjects contains ["closeout", ["closeout", "package", "investigation_summary"]]

met contains "closeout" if input.closeout.package.investigation_summary == true

deficient contains ["closeout", ["closeout", "package", "investigation_summary"]] if input.closeout.package.investigation_summary == false
