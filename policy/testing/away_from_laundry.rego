# METADATA
# title: The device stood away from washer and dryer
# description: A dryer blows air out and pulls soil gas in, and damp upsets the device.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Test again in another place of the same level.
#   limits:
#     minimum: {dimension: length, sense: at-least}
package policy.testing.away_from_laundry

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.away_from_laundry
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "to_washer_dryer"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

met contains t.id if {
	some t in input.measurements.tests
	t.id in radon_tests.after
	t.to_washer_dryer.si >= limits.minimum.si
}

deficient contains [t.id, ["measurements", "tests", i, "to_washer_dryer"], "minimum"] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	t.to_washer_dryer.si < limits.minimum.si
}

missing contains gap if some gap in radon_tests.unsaid

missing contains [t.id, ["measurements", "tests", i, "to_washer_dryer"]] if {
	some i, t in input.measurements.tests
	not is_number(t.to_washer_dryer.si)
}
