# METADATA
# title: The package says to call when the gauge has moved far from its mark or shows nothing
# description: The gauge only helps someone who knows which reading means trouble.
# custom:
#   subject: closeout package
#   grade: recommended
#   stage: closeout
#   remedy: Say in the package at which change of the gauge to call for service.
package policy.papers.package_service_call

import data.policy.systems
import rego.v2

subjects contains ["closeout", ["closeout", "package", "service_change"]]

exempt contains [id, "no fan drives a system of this job"] if {
	some [id, _] in subjects
	systems.no_fan
}

met contains "closeout" if {
	systems.fan_drives
	input.closeout.package.service_change == true
}

deficient contains ["closeout", ["closeout", "package", "service_change"]] if {
	systems.fan_drives
	input.closeout.package.service_change == false
}

missing contains [id, path] if {
	some [id, _] in subjects
	not systems.fan_drives
	some path in systems.unsaid_power
}

missing contains ["closeout", ["closeout", "package", "service_change"]] if not is_boolean(input.closeout.package.service_change)
