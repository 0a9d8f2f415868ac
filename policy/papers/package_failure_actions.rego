# METADATA
# title: The package says what to do when the warning device shows failure
# description: An alarm that nobody knows how to answer gets unplugged.
# custom:
#   subject: closeout package
#   grade: required
#   stage: closeout
#   remedy: Write down what to do, and whom to call, when gauge or alarm shows failure.
package policy.papers.package_failure_actions

import data.policy.systems
import rego.v2

subjects contains ["closeout", ["closeout", "package", "failure_actions"]]

exempt contains [id, "no fan drives a system of this job"] if {
	some [id, _] in subjects
	systems.no_fan
}

met contains "closeout" if {
	systems.fan_drives
	input.closeout.package.failure_actions == true
}

deficient contains ["closeout", ["closeout", "package", "failure_actions"]] if {
	systems.fan_drives
	input.closeout.package.failure_actions == false
}

missing contains [id, path] if {
	some [id, _] in subjects
	not systems.fan_drives
	some path in systems.unsaid_power
}

missing contains ["closeout", ["closeout", "package", "failure_actions"]] if not is_boolean(input.closeout.package.failure_actions)
