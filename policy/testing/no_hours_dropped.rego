# METADATA
# title: No hours were dropped from the monitor but those at the start
# description: Whoever picks the hours picks the result; only the waiting time at the start may go.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Report all hours from the first valid one to the end; if hours are lost, test again.
#   limits:
#     between: {dimension: duration, sense: at-most}
#     tail: {dimension: duration, sense: less-than}
package policy.testing.no_hours_dropped

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.no_hours_dropped
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "hours_left_out"]] if some i, t in input.measurements.tests

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

between contains t.id if {
	some t in input.measurements.tests
	t.hours_left_out.si <= limits.between.si
}

to_the_end contains d.id if {
	some d in input.derived.tests
	d.tail_left_out.si < limits.tail.si
}

met contains id if {
	some id in judged
	id in between
	id in to_the_end
}

deficient contains [t.id, ["measurements", "tests", i, "hours_left_out"], "between"] if {
	some i, t in input.measurements.tests
	t.id in judged
	t.hours_left_out.si > limits.between.si
}

deficient contains [d.id, ["derived", "tests", i, "tail_left_out"], "tail"] if {
	some i, d in input.derived.tests
	d.id in judged
	d.tail_left_out.si >= limits.tail.si
}

missing contains gap if some gap in radon_tests.unsaid

missing contains [t.id, ["measurements", "tests", i, "device"]] if {
	some i, t in input.measurements.tests
	not is_string(t.device)
}

missing contains [t.id, ["measurements", "tests", i, "hours_left_out"]] if {
	some i, t in input.measurements.tests
	not is_number(t.hours_left_out.si)
}

missing contains [d.id, ["derived", "tests", i, "tail_left_out"]] if {
	some i, d in input.derived.tests
	not is_number(d.tail_left_out.si)
}
