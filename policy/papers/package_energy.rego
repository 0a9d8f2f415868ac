# METADATA
# title: The package gives the yearly running cost
# description: A family that knows that the fan costs as much as a light bulb leaves it on.
# custom:
#   subject: closeout package
#   grade: recommended
#   stage: closeout
#   remedy: Add an estimate of what the fan uses in a year.
package policy.papers.package_energy

import data.policy.systems
import rego.v2

subjects contains ["closeout", ["closeout", "package", "energy_estimate"]]

exempt contains [id, "no fan drives a system of this job"] if {
	some [id, _] in subjects
	systems.no_fan
}

met contains "closeout" if {
	systems.fan_drives
	input.closeout.package.energy_estimate == true
}

deficient contains ["closeout", ["closeout", "package", "energy_estimate"]] if {
	systems.fan_drives
	input.closeout.package.energy_estimate == false
}

missing contains [id, path] if {
	some [id, _] in subjects
	not systems.fan_drives
	some path in systems.unsaid_power
}

missing contains ["closeout", ["closeout", "package", "energy_estimate"]] if not is_boolean(input.closeout.package.energy_estimate)
