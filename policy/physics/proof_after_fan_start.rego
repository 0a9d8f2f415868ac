# METADATA
# title: No test that proves the system is older than the fan
# description: A test from before the fan ran shows the house without its protection.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Look up when the fan first ran; test again with it running.
#   limits:
#     least: {dimension: duration, sense: at-least}
package policy.physics.proof_after_fan_start

import data.policy.radon_tests
import data.policy.systems
import rego.v2

limits := data.profile.physics.proof_after_fan_start

subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "start"]] if some i, t in input.measurements.tests

exempt contains [t.id, "this is not the test that proves the system"] if {
	some t in input.measurements.tests
	t.phase in {"before", "later"}
}

exempt contains outcome if some outcome in radon_tests.unfanned

judged contains t.id if {
	some t in input.measurements.tests
	t.phase == "after"
	systems.fan_drives
}

met contains d.id if {
	some d in input.derived.tests
	d.id in judged
	d.after_fan_start.si >= limits.least.si
}

deficient contains [d.id, ["derived", "tests", i, "after_fan_start"], "least"] if {
	some i, d in input.derived.tests
	d.id in judged
	d.after_fan_start.si < limits.least.si
}

undetermined contains [d.id, ["derived", "tests", i, "after_fan_start"], "start of the fan and start of the test are not both recorded"] if {
	some i, d in input.derived.tests
	d.id in judged
	not is_number(d.after_fan_start.si)
}

missing contains [t.id, ["measurements", "tests", i, "phase"]] if {
	some i, t in input.measurements.tests
	not is_string(t.phase)
}

missing contains [t.id, path] if {
	some t in input.measurements.tests
	some path in systems.unsaid_power
}
