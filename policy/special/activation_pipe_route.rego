# METADATA
# title: Before a fan goes on, the pipe was followed from slab to roof
# description: Builders leave pipes that end in an attic, hold water or were never joined.
# custom:
#   subject: job
#   grade: required
#   stage: roughed-in
#   remedy: Follow the pipe to the roof, check that it slopes back, and mend what is wrong before the fan goes on.
#   caution: Roof work needs fall protection.
package policy.special.activation_pipe_route

import rego.v2

subjects contains ["job", ["job", "existing_system", "pipe_route_checked"]]

exempt contains [id, "no roughed-in or passive pipe is put to use"] if {
	some [id, _] in subjects
	is_string(input.job.purpose)
	input.job.purpose != "activation-of-rough-in"
}

met contains "job" if {
	input.job.purpose == "activation-of-rough-in"
	input.job.existing_system.pipe_route_checked == true
}

deficient contains ["job", ["job", "existing_system", "pipe_route_checked"]] if {
	input.job.purpose == "activation-of-rough-in"
	input.job.existing_system.pipe_route_checked == false
}

missing contains ["job", ["job", "purpose"]] if not is_string(input.job.purpose)

missing contains ["job", ["job", "existing_system", "pipe_route_checked"]] if not is_boolean(input.job.existing_system.pipe_route_checked)
