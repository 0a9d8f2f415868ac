# METADATA
# title: The device stood in a room fit for a test
# description: Wet rooms and closets have air of their own; a crawlspace or a pit says nothing about the room where somebody sleeps.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Test again in a room of the same level that people live in.
#   limits:
#     unfit: {dimension: choice, sense: none-of}
package policy.testing.room

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.room
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "room"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

met contains t.id if {
	some t in input.measurements.tests
	t.id in radon_tests.after
	is_string(t.room)
	not t.room in limits.unfit.any_of
}

deficient contains [t.id, ["measurements", "tests", i, "room"], "unfit"] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	t.room in limits.unfit.any_of
}

missing contains gap if some gap in radon_tests.unsaid

missing contains [t.id, ["measurements", "tests", i, "room"]] if {
	some i, t in input.measurements.tests
	not is_string(t.room)
}
