# METADATA
# title: The calibration of the monitor was valid to the end of the test
# description: Detectors drift; past its date the number on the display is a guess.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Have the monitor calibrated and test again.
#   limits:
#     left: {dimension: duration, sense: at-least}
package policy.testing.calibrated_monitor

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.calibrated_monitor
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["derived", "tests", i, "calibration_left"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

exempt contains [t.id, "the device is no continuous monitor"] if {
	some t in input.measurements.tests
	is_string(t.device)
	t.device != "continuous-monitor"
}

judged contains id if {
	some id in radon_tests.after
	id in radon_tests.monitors
}

met contains d.id if {
	some d in input.derived.tests
	d.id in judged
	d.calibration_left.si >= limits.left.si
}

deficient contains [d.id, ["derived", "tests", i, "calibration_left"], "left"] if {
	some i, d in input.derived.tests
	d.id in judged
	d.calibration_left.si < limits.left.si
}

missing contains gap if some gap in radon_tests.unsaid

missing contains [t.id, ["measurements", "tests", i, "device"]] if {
	some i, t in input.measurements.tests
	not is_string(t.device)
}

missing contains [d.id, ["derived", "tests", i, "calibration_left"]] if {
	some i, d in input.derived.tests
	not is_number(d.calibration_left.si)
}
