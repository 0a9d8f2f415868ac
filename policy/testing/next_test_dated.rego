# METADATA
# title: The day of the next test is set, two years off at most
# description: A day on the calendar is kept; advice in a folder is forgotten.
# custom:
#   subject: closeout papers
#   grade: recommended
#   stage: closeout
#   remedy: Set the day of the next test and tell the owner.
package policy.testing.next_test_dated

import data.policy.radon_tests
import rego.v2

subjects contains ["closeout", ["closeout", "retest_due"]]

exempt contains [id, reason] if {
	some [id, _] in subjects
	some reason in radon_tests.not_asked
}

exempt contains [id, "there is no test after the work, which another requirement asks for"] if {
	some [id, _] in subjects
	radon_tests.none_after
}

asked if {
	input.job.contaminant in {"radon", "both"}
	not radon_tests.none_after
}

met contains id if {
	asked
	some [id, _] in subjects
	input.closeout.retest_due.si <= input.derived.retest_due.si
}

deficient contains [id, ["closeout", "retest_due"]] if {
	asked
	some [id, _] in subjects
	input.closeout.retest_due.si > input.derived.retest_due.si
}

missing contains [id, ["job", "contaminant"]] if {
	some [id, _] in subjects
	not is_string(input.job.contaminant)
}

missing contains [id, ["closeout", "retest_due"]] if {
	some [id, _] in subjects
	not is_number(input.closeout.retest_due.si)
}

missing contains [id, ["derived", "retest_due"]] if {
	some [id, _] in subjects
	not is_number(input.derived.retest_due.si)
}
