# METADATA
# title: Before a fan goes on, openings in slab and membrane were looked for and closed
# description: A fan on an open slab draws warm air from the rooms, and flue gas after it.
# custom:
#   subject: job
#   grade: required
#   stage: roughed-in
#   remedy: Look for openings in slab and membrane and close them before the fan goes on.
#   caution: Wherever fuel burns, test for backdrafting once the fan runs.
package policy.special.activation_openings

import rego.v2

subjects contains ["job", ["job", "existing_system", "openings_checked"]]

exempt contains [id, "no roughed-in or passive pipe is put to use"] if {
	some [id, _] in subjects
	is_string(input.job.purpose)
	input.job.purpose != "activation-of-rough-in"
}

met contains "job" if {
	input.job.purpose == "activation-of-rough-in"
	input.job.existing_system.openings_checked == true
}

deficient contains ["job", ["job", "existing_system", "openings_checked"]] if {
	input.job.purpose == "activation-of-rough-in"
	input.job.existing_system.openings_checked == false
}

missing contains ["job", ["job", "purpose"]] if not is_string(input.job.purpose)

missing contains ["job", ["job", "existing_system", "openings_checked"]] if not is_boolean(input.job.existing_system.openings_checked)
