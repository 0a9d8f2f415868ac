# METADATA
# title: The package gives the yearly running cost
# description: A family that knows that the fan costs as much as a light bulb leaves it on.
# custom:
#   subject: closeout package
#   grade: recommended
#   stage: closeout
#   remedy: Add an estimate of what the fan uses in a year.
package policy.papers.package_energy

import rego.v2

subjects contains ["closeout", ["closeout", "package", "energy_estimate"]]

met contains "closeout" if input.closeout.package.energy_estimate == true

deficient contains ["closeout", ["closeout", "package", "energy_estimate"]] if input.closeout.package.energy_estimate == false
