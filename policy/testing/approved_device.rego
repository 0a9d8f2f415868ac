# METADATA
# title: The device is approved for radon tests
# description: A gadget that nobody checked can show a safe number in an unsafe room.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Test again with a device that a national programme or the state lists.
package policy.testing.approved_device

import data.policy.radon_tests
import rego.v2

subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "approved"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

met contains t.id if {
	some t in input.measurements.tests
	t.id in radon_tests.after
	t.approved == true
}

deficient contains [t.id, ["measurements", "tests", i, "approved"]] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	t.approved == false
}

missing contains gap if some gap in radon_tests.unsaid

missing contains [t.id, ["measurements", "tests", i, "approved"]] if {
	some i, t in input.measurements.tests
	not is_boolean(t.approved)
}
