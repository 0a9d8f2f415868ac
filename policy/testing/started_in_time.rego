# METADATA
# title: A test began soon after the work was finished
# description: Until somebody tests, a family may live for months with a system that does not work.
# custom:
#   subject: tests together
#   grade: required
#   stage: closeout
#   remedy: Start a test now, and agree on the date of the test before the next job is finished.
#   limits:
#     within: {dimension: duration, sense: at-most}
package policy.testing.started_in_time

import data.policy.radon_tests
import data.policy.systems
import rego.v2

limits := data.profile.testing.started_in_time
subjects contains ["measurements", ["measurements", "tests"]]

exempt contains [radon_tests.all, reason] if some reason in radon_tests.not_asked

exempt contains [radon_tests.all, "no fan drives a system of this job"] if systems.no_fan

exempt contains [radon_tests.all, "there is no test after the work, which another requirement asks for"] if radon_tests.none_after

soon contains d.id if {
	some d in input.derived.tests
	d.id in radon_tests.after
	d.days_after_completion.si <= limits.within.si
}

late contains d.id if {
	some d in input.derived.tests
	d.id in radon_tests.after
	d.days_after_completion.si > limits.within.si
}

met contains radon_tests.all if {
	systems.fan_drives
	count(soon) > 0
}

deficient contains [radon_tests.all, ["derived", "tests", i, "days_after_completion"], "within"] if {
	systems.fan_drives
	count(radon_tests.open) == count(late)
	some i, d in input.derived.tests
	d.id in late
}

missing contains [radon_tests.all, path] if {
	not systems.fan_drives
	some path in systems.unsaid_power
}

missing contains [radon_tests.all, path] if some path in radon_tests.unsaid_of_all

missing contains [radon_tests.all, ["derived", "tests", i, "days_after_completion"]] if {
	some i, d in input.derived.tests
	d.id in radon_tests.open
	not is_number(d.days_after_completion.si)
}
