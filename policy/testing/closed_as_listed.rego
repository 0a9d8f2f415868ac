# METADATA
# title: What closed means was listed for the people in the house and checked
# description: Nobody opens a window to cheat; people forget that a window fan or an outside-air damper counts too.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Hand out the list of what stays shut and off, and note at pick-up that it was kept.
package policy.testing.closed_as_listed

import data.policy.radon_tests
import rego.v2

subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "closed_conditions_listed"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

exempt contains outcome if some outcome in radon_tests.long_term

met contains t.id if {
	some t in input.measurements.tests
	t.id in radon_tests.after_short
	t.closed_conditions_listed == true
}

deficient contains [t.id, ["measurements", "tests", i, "closed_conditions_listed"]] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after_short
	t.closed_conditions_listed == false
}

missing contains gap if some gap in radon_tests.unsaid

missing contains gap if some gap in radon_tests.unsaid_kind

missing contains [t.id, ["measurements", "tests", i, "closed_conditions_listed"]] if {
	some i, t in input.measurements.tests
	not is_boolean(t.closed_conditions_listed)
}
