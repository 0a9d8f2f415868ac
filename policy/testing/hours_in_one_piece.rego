# METADATA
# title: The monitor has enough valid hours in one piece
# description: Hours count only once the fan has run and the house has been shut; a handful of them says little about a day.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Leave the monitor until enough hours in a row lie behind both waiting times, or test again.
#   limits:
#     minimum: {dimension: duration, sense: at-least}
package policy.testing.hours_in_one_piece

import data.policy.radon_tests
import data.policy.systems
import rego.v2

limits := data.profile.testing.hours_in_one_piece
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["derived", "tests", i, "valid_hours"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

exempt contains [t.id, "the device is no continuous monitor"] if {
	some t in input.measurements.tests
	is_string(t.device)
	t.device != "continuous-monitor"
}

exempt contains outcome if some outcome in radon_tests.unfanned

judged contains id if {
	systems.fan_drives
	some id in radon_tests.after
	id in radon_tests.monitors
}

met contains d.id if {
	some d in input.derived.tests
	d.id in judged
	d.valid_hours.si >= limits.minimum.si
}

deficient contains [d.id, ["derived", "tests", i, "valid_hours"], "minimum"] if {
	some i, d in input.derived.tests
	d.id in judged
	d.valid_hours.si < limits.minimum.si
}

undetermined contains [t.id, ["measurements", "tests", i, "hours_left_out"], "hours were left out and the record does not say which"] if {
	some i, t in input.measurements.tests
	t.id in judged
	t.hours_left_out.si > 0
}

missing contains gap if some gap in radon_tests.unsaid

missing contains [t.id, path] if {
	some t in input.measurements.tests
	not systems.fan_drives
	some path in systems.unsaid_power
}

missing contains [t.id, ["measurements", "tests", i, "device"]] if {
	some i, t in input.measurements.tests
	not is_string(t.device)
}

missing contains [d.id, ["derived", "tests", i, "valid_hours"]] if {
	some i, d in input.derived.tests
	not is_number(d.valid_hours.si)
}
