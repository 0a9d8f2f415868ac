# METADATA
# title: The first test after the work lasts some days, not weeks
# description: The people in the house should know within days whether they are safe.
# custom:
#   subject: test
#   grade: recommended
#   stage: closeout
#   remedy: Plan the first test for a few days; a long test can follow.
#   limits:
#     minimum: {dimension: duration, sense: at-least}
#     maximum: {dimension: duration, sense: at-most}
package policy.testing.advised_length

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.advised_length
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["derived", "tests", i, "duration"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

exempt contains outcome if some outcome in radon_tests.long_term

met contains d.id if {
	some d in input.derived.tests
	d.id in radon_tests.after_short
	d.duration.si >= limits.minimum.si
	d.duration.si <= limits.maximum.si
}

deficient contains [d.id, ["derived", "tests", i, "duration"], "minimum"] if {
	some i, d in input.derived.tests
	d.id in radon_tests.after_short
	d.duration.si < limits.minimum.si
}

deficient contains [d.id, ["derived", "tests", i, "duration"], "maximum"] if {
	some i, d in input.derived.tests
	d.id in radon_tests.after_short
	d.duration.si > limits.maximum.si
}

missing contains gap if some gap in radon_tests.unsaid

missing contains gap if some gap in radon_tests.unsaid_kind

missing contains [d.id, ["derived", "tests", i, "duration"]] if {
	some i, d in input.derived.tests
	not is_number(d.duration.si)
}
