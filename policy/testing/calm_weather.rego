# METADATA
# title: A brief test was not made in severe weather
# description: Storm and falling pressure pull soil gas in or blow it out; in a brief test that is most of the reading.
# custom:
#   subject: test
#   grade: recommended
#   stage: closeout
#   remedy: Test again in calmer weather, or longer.
#   limits:
#     brief: {dimension: duration, sense: less-than}
package policy.testing.calm_weather

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.calm_weather
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "severe_weather"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

exempt contains outcome if some outcome in radon_tests.long_term

exempt contains [d.id, "the test is long enough to even the weather out"] if {
	some d in input.derived.tests
	d.duration.si >= limits.brief.si
}

judged contains d.id if {
	some d in input.derived.tests
	d.id in radon_tests.after_short
	d.duration.si < limits.brief.si
}

met contains t.id if {
	some t in input.measurements.tests
	t.id in judged
	t.severe_weather == false
}

deficient contains [t.id, ["measurements", "tests", i, "severe_weather"]] if {
	some i, t in input.measurements.tests
	t.id in judged
	t.severe_weather == true
}

missing contains gap if some gap in radon_tests.unsaid

missing contains gap if some gap in radon_tests.unsaid_kind

missing contains [d.id, ["derived", "tests", i, "duration"]] if {
	some i, d in input.derived.tests
	not is_number(d.duration.si)
}

missing contains [t.id, ["measurements", "tests", i, "severe_weather"]] if {
	some i, t in input.measurements.tests
	not is_boolean(t.severe_weather)
}
