# METADATA
# title: The device hung clear of the ceiling
# description: Air that stands under a ceiling is not the air of the room.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Test again with the device lower.
#   limits:
#     minimum: {dimension: length, sense: at-least}
package policy.testing.off_the_ceiling

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.off_the_ceiling
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "to_ceiling"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

met contains t.id if {
	some t in input.measurements.tests
	t.id in radon_tests.after
	t.to_ceiling.si >= limits.minimum.si
}

deficient contains [t.id, ["measurements", "tests", i, "to_ceiling"], "minimum"] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	t.to_ceiling.si < limits.minimum.si
}

missing contains gap if some gap in radon_tests.unsaid

missing contains [t.id, ["measurements", "tests", i, "to_ceiling"]] if {
	some i, t in input.measurements.tests
	not is_number(t.to_ceiling.si)
}
