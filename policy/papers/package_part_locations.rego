# METADATA
# title: The package says where monitors, ports and disconnects are
# description: In a hurry somebody has to find the switch without a tour of the attic.
# custom:
#   subject: closeout package
#   grade: recommended
#   stage: closeout
#   remedy: Write down where gauge, alarm, test ports and disconnect are.
package policy.papers.package_part_locations

import data.policy.systems
import rego.v2

subjects contains ["closeout", ["closeout", "package", "part_locations"]]

exempt contains [id, "no fan drives a system of this job"] if {
	some [id, _] in subjects
	systems.no_fan
}

met contains "closeout" if {
	systems.fan_drives
	input.closeout.package.part_locations == true
}

deficient contains ["closeout", ["closeout", "package", "part_locations"]] if {
	systems.fan_drives
	input.closeout.package.part_locations == false
}

missing contains [id, path] if {
	some [id, _] in subjects
	not systems.fan_drives
	some path in systems.unsaid_power
}

missing contains ["closeout", ["closeout", "package", "part_locations"]] if not is_boolean(input.closeout.package.part_locations)
