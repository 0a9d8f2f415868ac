# METADATA
# title: No test called one from before the work started after the fan did
# description: With the fan on it says nothing of what the family breathed until then.
# custom:
#   subject: test
#   grade: required
#   stage: running
#   remedy: Correct which test this is, or its times.
#   limits:
#     most: {dimension: duration, sense: at-most}
package policy.physics.first_test_before_fan

import data.policy.radon_tests
import data.policy.systems
import rego.v2

limits := data.profile.physics.first_test_before_fan

subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "start"]] if some i, t in input.measurements.tests

exempt contains [t.id, "it was made after the work"] if {
	some t in input.measurements.tests
	t.phase in {"after", "later"}
}

exempt contains outcome if some outcome in radon_tests.unfanned

judged contains t.id if {
	some t in input.measurements.tests
	t.phase == "before"
	systems.fan_drives
}

met contains d.id if {
	some d in input.derived.tests
	d.id in judged
	d.after_fan_start.si <= limits.most.si
}

deficient contains [d.id, ["derived", "tests", i, "after_fan_start"], "most"] if {
	some i, d in input.derived.tests
	d.id in judged
	d.after_fan_start.si > limits.most.si
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
