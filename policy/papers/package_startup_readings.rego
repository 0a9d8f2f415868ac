# METADATA
# title: The package gives the readings and marks from the start
# description: Without the first reading nobody can tell a tired fan from a healthy one.
# custom:
#   subject: closeout package
#   grade: recommended
#   stage: closeout
#   remedy: Write the start-up readings and where they are marked into the package.
package policy.papers.package_startup_readings

import data.policy.systems
import rego.v2

subjects contains ["closeout", ["closeout", "package", "startup_readings"]]

exempt contains [id, "no fan drives a system of this job"] if {
	some [id, _] in subjects
	systems.no_fan
}

met contains "closeout" if {
	systems.fan_drives
	input.closeout.package.startup_readings == true
}

deficient contains ["closeout", ["closeout", "package", "startup_readings"]] if {
	systems.fan_drives
	input.closeout.package.startup_readings == false
}

missing contains [id, path] if {
	some [id, _] in subjects
	not systems.fan_drives
	some path in systems.unsaid_power
}

missing contains ["closeout", ["closeout", "package", "startup_readings"]] if not is_boolean(input.closeout.package.startup_readings)
