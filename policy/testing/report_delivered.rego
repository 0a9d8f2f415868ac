# METADATA
# title: The report was handed out in time
# description: A result in a drawer protects nobody.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Send the report now.
#   limits:
#     within: {dimension: duration, sense: at-most}
package policy.testing.report_delivered

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.report_delivered
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["derived", "tests", i, "days_to_report"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

met contains d.id if {
	some d in input.derived.tests
	d.id in radon_tests.after
	d.days_to_report.si <= limits.within.si
}

deficient contains [d.id, ["derived", "tests", i, "days_to_report"], "within"] if {
	some i, d in input.derived.tests
	d.id in radon_tests.after
	d.days_to_report.si > limits.within.si
}

missing contains gap if some gap in radon_tests.unsaid

missing contains [d.id, ["derived", "tests", i, "days_to_report"]] if {
	some i, d in input.derived.tests
	not is_number(d.days_to_report.si)
}
