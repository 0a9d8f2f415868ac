# METADATA
# title: The package gives the readings and marks from the start
# description: Without the first reading nobody can tell a tired fan from a healthy one.
# custom:
#   subject: closeout package
#   grade: recommended
#   stage: closeout
#   remedy: Write the start-up readings and where they are marked into the package.
package policy.papers.package_startup_readings

import rego.v2

subjects contains ["closeout", ["closeout", "package", "startup_readings"]]

met contains "closeout" if input.closeout.package.startup_readings == true

deficient contains ["closeout", ["closeout", "package", "startup_readings"]] if input.closeout.package.startup_readings == false
