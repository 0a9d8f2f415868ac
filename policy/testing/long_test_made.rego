# METADATA
# title: A long test was made after the work
# description: The guideline is about the yearly average; a few days in one season can be far from it.
# custom:
#   subject: tests together
#   grade: required
#   stage: closeout
#   remedy: Leave a long-term device in the lowest lived-in level, best from autumn to spring.
#   limits:
#     minimum: {dimension: duration, sense: at-least}
package policy.testing.long_test_made

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.long_test_made
subjects contains ["measurements", ["measurements", "tests"]]

exempt contains [radon_tests.all, reason] if some reason in radon_tests.not_asked

exempt contains [radon_tests.all, "there is no test after the work, which another requirement asks for"] if radon_tests.none_after

long contains d.id if {
	some d in input.derived.tests
	d.id in radon_tests.after
	d.duration.si >= limits.minimum.si
}

brief contains d.id if {
	some d in input.derived.tests
	d.id in radon_tests.after
	d.duration.si < limits.minimum.si
}

met contains radon_tests.all if count(long) > 0

deficient contains [radon_tests.all, ["derived", "tests", i, "duration"], "minimum"] if {
	count(radon_tests.open) == count(brief)
	some i, d in input.derived.tests
	d.id in brief
}

missing contains [radon_tests.all, path] if some path in radon_tests.unsaid_of_all

missing contains [radon_tests.all, ["derived", "tests", i, "duration"]] if {
	some i, d in input.derived.tests
	d.id in radon_tests.open
	not is_number(d.duration.si)
}
