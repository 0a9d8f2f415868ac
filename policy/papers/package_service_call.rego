# METADATA
# title: The package says to call when the gauge has moved far from its mark or shows nothing
# description: The gauge only helps someone who knows which reading means trouble.
# custom:
#   subject: closeout package
#   grade: recommended
#   stage: closeout
#   remedy: Say in the package at which change of the gauge to call for service.
package policy.papers.package_service_call

import rego.v2

subjects contains ["closeout", ["closeout", "package", "service_change"]]

met contains "closeout" if input.closeout.package.service_change == true

deficient contains ["closeout", ["closeout", "package", "service_change"]] if input.closeout.package.service_change == false
