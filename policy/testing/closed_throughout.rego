# METADATA
# title: The house stayed closed during the test
# description: One evening with open windows can hide a level that people breathe the rest of the year.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Test again with windows shut and doors used only for passing.
package policy.testing.closed_throughout

import data.policy.radon_tests
import rego.v2

subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "closed_throughout"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

exempt contains outcome if some outcome in radon_tests.long_term

met contains t.id if {
	some t in input.measurements.tests
	t.id in radon_tests.after_short
	t.closed_throughout == true
}

deficient contains [t.id, ["measurements", "tests", i, "closed_throughout"]] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after_short
	t.closed_throughout == false
}

missing contains gap if some gap in radon_tests.unsaid

missing contains gap if some gap in radon_tests.unsaid_kind

missing contains [t.id, ["measurements", "tests", i, "closed_throughout"]] if {
	some i, t in input.measurements.tests
	not is_boolean(t.closed_throughout)
}
