# METADATA
# title: The system ran during the whole test
# description: A test with the fan off for a night tells neither how the house was nor how it is.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Find out why the fan stopped, set it right, and test again.
package policy.testing.system_running

import data.policy.radon_tests
import data.policy.systems
import rego.v2

subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "system_running"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

exempt contains outcome if some outcome in radon_tests.unfanned

met contains t.id if {
	some t in input.measurements.tests
	t.id in radon_tests.after
	systems.fan_drives
	t.system_running == true
}

deficient contains [t.id, ["measurements", "tests", i, "system_running"]] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	systems.fan_drives
	t.system_running == false
}

missing contains gap if some gap in radon_tests.unsaid

missing contains [t.id, path] if {
	some t in input.measurements.tests
	not systems.fan_drives
	some path in systems.unsaid_power
}

missing contains [t.id, ["measurements", "tests", i, "system_running"]] if {
	some i, t in input.measurements.tests
	not is_boolean(t.system_running)
}
