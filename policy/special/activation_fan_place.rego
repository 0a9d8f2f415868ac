# METADATA
# title: Before a fan goes on, its place was checked
# description: Pipe that leaked nothing under a chimney draft blows soil gas into rooms once a fan pushes.
# custom:
#   subject: job
#   grade: required
#   stage: roughed-in
#   remedy: Check that the fan will stand in an allowed place with room to work, or move the place.
#   caution: Attic and roof work needs sure footing and fall protection.
package policy.special.activation_fan_place

import rego.v2

subjects contains ["job", ["job", "existing_system", "fan_place_checked"]]

exempt contains [id, "no roughed-in or passive pipe is put to use"] if {
	some [id, _] in subjects
	is_string(input.job.purpose)
	input.job.purpose != "activation-of-rough-in"
}

met contains "job" if {
	input.job.purpose == "activation-of-rough-in"
	input.job.existing_system.fan_place_checked == true
}

deficient contains ["job", ["job", "existing_system", "fan_place_checked"]] if {
	input.job.purpose == "activation-of-rough-in"
	input.job.existing_system.fan_place_checked == false
}

missing contains ["job", ["job", "purpose"]] if not is_string(input.job.purpose)

missing contains ["job", ["job", "existing_system", "fan_place_checked"]] if not is_boolean(input.job.existing_system.fan_place_checked)
