# METADATA
# title: Nobody disturbed the device during the test
# description: A device that was covered, moved or aired tells of the hand that did it, not of the air that people breathe.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Test again, with a seal or notice on the device and the people in the house told to leave it alone.
package policy.testing.undisturbed

import data.policy.radon_tests
import rego.v2

subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "tampering"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

met contains t.id if {
	some t in input.measurements.tests
	t.id in radon_tests.after
	t.tampering == false
}

deficient contains [t.id, ["measurements", "tests", i, "tampering"]] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	t.tampering == true
}

missing contains gap if some gap in radon_tests.unsaid

missing contains [t.id, ["measurements", "tests", i, "tampering"]] if {
	some i, t in input.measurements.tests
	not is_boolean(t.tampering)
}
