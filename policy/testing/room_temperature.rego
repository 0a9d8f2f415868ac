# METADATA
# title: The house was kept at its usual temperature during the test
# description: A cold or overheated house draws soil gas differently from the one people live in.
# custom:
#   subject: test
#   grade: recommended
#   stage: closeout
#   remedy: Note the temperature, and keep the next test within the usual range.
#   limits:
#     minimum: {dimension: temperature, sense: at-least}
#     maximum: {dimension: temperature, sense: at-most}
package policy.testing.room_temperature

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.room_temperature
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "indoor_temperature"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

exempt contains outcome if some outcome in radon_tests.long_term

met contains t.id if {
	some t in input.measurements.tests
	t.id in radon_tests.after_short
	t.indoor_temperature.si >= limits.minimum.si
	t.indoor_temperature.si <= limits.maximum.si
}

deficient contains [t.id, ["measurements", "tests", i, "indoor_temperature"], "minimum"] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after_short
	t.indoor_temperature.si < limits.minimum.si
}

deficient contains [t.id, ["measurements", "tests", i, "indoor_temperature"], "maximum"] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after_short
	t.indoor_temperature.si > limits.maximum.si
}

missing contains gap if some gap in radon_tests.unsaid

missing contains gap if some gap in radon_tests.unsaid_kind

missing contains [t.id, ["measurements", "tests", i, "indoor_temperature"]] if {
	some i, t in input.measurements.tests
	not is_number(t.indoor_temperature.si)
}
