# METADATA
# title: The first chemical vapor sample was taken long enough after the start
# description: Vapor held in the soil and the house leaves slowly; an early sample scares or soothes without reason.
# custom:
#   subject: tests together
#   grade: required
#   stage: closeout
#   remedy: Take the sample again after the waiting time.
#   limits:
#     lead: {dimension: duration, sense: at-least}
#     contaminants: {dimension: choice, sense: applies-to}
package policy.testing.vapor_waits

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.vapor_waits
subjects contains ["measurements", ["measurements", "vapor_first_sampled"]]

exempt contains [radon_tests.all, "the job is not about chemical vapor"] if {
	is_string(input.job.contaminant)
	not input.job.contaminant in limits.contaminants.any_of
}

met contains radon_tests.all if {
	input.job.contaminant in limits.contaminants.any_of
	input.derived.order.fan_start_before_vapor_sample.si >= limits.lead.si
}

deficient contains [radon_tests.all, ["derived", "order", "fan_start_before_vapor_sample"], "lead"] if {
	input.job.contaminant in limits.contaminants.any_of
	input.derived.order.fan_start_before_vapor_sample.si < limits.lead.si
}

missing contains [radon_tests.all, ["job", "contaminant"]] if not is_string(input.job.contaminant)

missing contains [radon_tests.all, ["derived", "order", "fan_start_before_vapor_sample"]] if {
	not is_number(input.derived.order.fan_start_before_vapor_sample.si)
}
