# METADATA
# title: Before a fan goes on, power at its place was checked
# description: A fan hung where no power is ends up on an extension cord.
# custom:
#   subject: job
#   grade: required
#   stage: roughed-in
#   remedy: Check for a live outlet or box at the fan place, and have one put in where it is missing.
#   caution: Wiring is for licensed people.
package policy.special.activation_power

import rego.v2

subjects contains ["job", ["job", "existing_system", "power_checked"]]

exempt contains [id, "no roughed-in or passive pipe is put to use"] if {
	some [id, _] in subjects
	is_string(input.job.purpose)
	input.job.purpose != "activation-of-rough-in"
}

met contains "job" if {
	input.job.purpose == "activation-of-rough-in"
	input.job.existing_system.power_checked == true
}

deficient contains ["job", ["job", "existing_system", "power_checked"]] if {
	input.job.purpose == "activation-of-rough-in"
	input.job.existing_system.power_checked == false
}

missing contains ["job", ["job", "purpose"]] if not is_string(input.job.purpose)

missing contains ["job", ["job", "existing_system", "power_checked"]] if not is_boolean(input.job.existing_system.power_checked)
