# METADATA
# title: The report says when, where, with what and in which state of house and system
# description: A bare number cannot be checked or compared by anybody later.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Complete the report with times, address, device, credentials, places, system state, tampering and weather.
package policy.testing.report_complete

import data.policy.radon_tests
import rego.v2

subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "report_complete"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

met contains t.id if {
	some t in input.measurements.tests
	t.id in radon_tests.after
	t.report_complete == true
}

deficient contains [t.id, ["measurements", "tests", i, "report_complete"]] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	t.report_complete == false
}

missing contains gap if some gap in radon_tests.unsaid

missing contains [t.id, ["measurements", "tests", i, "report_complete"]] if {
	some i, t in input.measurements.tests
	not is_boolean(t.report_complete)
}
