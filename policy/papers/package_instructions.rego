# METADATA
# title: The package holds operating and maintenance instructions with the makers' papers
# description: The family runs the system for the next twenty years without the crew.
# custom:
#   subject: closeout package
#   grade: required
#   stage: closeout
#   remedy: Add instructions for operation and upkeep, and the papers of fan, gauge and alarm.
package policy.papers.package_instructions

import rego.v2

subjects contains ["closeout", ["closeout", "package", "operating_instructions"]]

met contains "closeout" if input.closeout.package.operating_instructions == true

deficient contains ["closeout", ["closeout", "package", "operating_instructions"]] if input.closeout.package.operating_instructions == false
