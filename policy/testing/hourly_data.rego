# METADATA
# title: The hourly readings of the monitor are kept
# description: The hours show an opened window or a stopped fan; the mean does not.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Save the hourly readings with the job.
package policy.testing.hourly_data

import data.policy.radon_tests
import rego.v2

subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "hourly_data_kept"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

exempt contains [t.id, "the device is no continuous monitor"] if {
	some t in input.measurements.tests
	is_string(t.device)
	t.device != "continuous-monitor"
}

met contains t.id if {
	some t in input.measurements.tests
	t.id in radon_tests.after
	t.id in radon_tests.monitors
	t.hourly_data_kept == true
}

deficient contains [t.id, ["measurements", "tests", i, "hourly_data_kept"]] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	t.id in radon_tests.monitors
	t.hourly_data_kept == false
}

missing contains gap if some gap in radon_tests.unsaid

missing contains [t.id, ["measurements", "tests", i, "device"]] if {
	some i, t in input.measurements.tests
	not is_string(t.device)
}

missing contains [t.id, ["measurements", "tests", i, "hourly_data_kept"]] if {
	some i, t in input.measurements.tests
	not is_boolean(t.hourly_data_kept)
}
