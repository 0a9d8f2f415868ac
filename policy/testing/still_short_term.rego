# METADATA
# title: A test called short-term is short enough to be one
# description: A device left for months means something else than one left for days, and is read against other rules.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Record the test as long-term, and judge it as one.
#   limits:
#     maximum: {dimension: duration, sense: at-most}
package policy.testing.still_short_term

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.still_short_term
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["derived", "tests", i, "duration"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

exempt contains outcome if some outcome in radon_tests.long_term

met contains d.id if {
	some d in input.derived.tests
	d.id in radon_tests.after_short
	d.duration.si <= limits.maximum.si
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
