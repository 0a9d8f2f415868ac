# METADATA
# title: The test started long enough after the fan
# description: Radon that was in the house before the fan ran needs a day to decay and leave; a test begun sooner reads old air.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Start the test anew, a day or more after the fan was switched on.
#   limits:
#     lead: {dimension: duration, sense: at-least}
#     by_hours: {dimension: choice, sense: one-of}
package policy.testing.after_fan_start

import data.policy.radon_tests
import data.policy.systems
import rego.v2

limits := data.profile.testing.after_fan_start
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["derived", "tests", i, "after_fan_start"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

exempt contains outcome if some outcome in radon_tests.unfanned

exempt contains [t.id, "a monitor of this kind is judged by the hours that count"] if {
	some t in input.measurements.tests
	t.device in limits.by_hours.any_of
}

judged contains t.id if {
	systems.fan_drives
	some t in input.measurements.tests
	t.id in radon_tests.after
	is_string(t.device)
	not t.device in limits.by_hours.any_of
}

met contains d.id if {
	some d in input.derived.tests
	d.id in judged
	d.after_fan_start.si >= limits.lead.si
}

deficient contains [d.id, ["derived", "tests", i, "after_fan_start"], "lead"] if {
	some i, d in input.derived.tests
	d.id in judged
	d.after_fan_start.si < limits.lead.si
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

missing contains [d.id, ["derived", "tests", i, "after_fan_start"]] if {
	some i, d in input.derived.tests
	not is_number(d.after_fan_start.si)
}
