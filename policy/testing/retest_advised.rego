# METADATA
# title: The papers advise a new test within two years, and at sale or alteration
# description: Fans wear out and houses settle; only another test shows that the people in the house are still safe.
# custom:
#   subject: closeout papers
#   grade: required
#   stage: closeout
#   remedy: Write into the papers when to test next, and that a sale or an alteration calls for a test.
#   limits:
#     interval: {dimension: duration, sense: at-most}
package policy.testing.retest_advised

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.retest_advised
subjects contains ["closeout", ["closeout", "package", "retest_interval"]]

exempt contains [id, reason] if {
	some [id, _] in subjects
	some reason in radon_tests.not_asked
}

asked if input.job.contaminant in {"radon", "both"}

met contains id if {
	asked
	some [id, _] in subjects
	input.closeout.package.retest_interval.si <= limits.interval.si
	input.closeout.package.retest_at_sale == true
}

deficient contains [id, ["closeout", "package", "retest_interval"], "interval"] if {
	asked
	some [id, _] in subjects
	input.closeout.package.retest_interval.si > limits.interval.si
}

deficient contains [id, ["closeout", "package", "retest_at_sale"]] if {
	asked
	some [id, _] in subjects
	input.closeout.package.retest_at_sale == false
}

missing contains [id, ["job", "contaminant"]] if {
	some [id, _] in subjects
	not is_string(input.job.contaminant)
}

missing contains [id, ["closeout", "package", "retest_interval"]] if {
	some [id, _] in subjects
	not is_number(input.closeout.package.retest_interval.si)
}

missing contains [id, ["closeout", "package", "retest_at_sale"]] if {
	some [id, _] in subjects
	not is_boolean(input.closeout.package.retest_at_sale)
}
