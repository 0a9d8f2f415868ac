# METADATA
# title: The test lasted long enough
# description: Radon swings with day and night; less than two days catch one swing by chance.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Test again for at least the time called for.
#   limits:
#     minimum: {dimension: duration, sense: at-least}
package policy.testing.long_enough

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.long_enough
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["derived", "tests", i, "duration"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

met contains d.id if {
	some d in input.derived.tests
	d.id in radon_tests.after
	d.duration.si >= limits.minimum.si
}

deficient contains [d.id, ["derived", "tests", i, "duration"], "minimum"] if {
	some i, d in input.derived.tests
	d.id in radon_tests.after
	d.duration.si < limits.minimum.si
}

missing contains gap if some gap in radon_tests.unsaid

missing contains [d.id, ["derived", "tests", i, "duration"]] if {
	some i, d in input.derived.tests
	not is_number(d.duration.si)
}
