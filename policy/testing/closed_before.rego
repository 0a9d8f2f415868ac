# METADATA
# title: The house was closed long enough before the test
# description: Fresh air from an open window stays in the reading for hours and makes a poor system look good.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Test again and keep windows and outside doors shut from half a day before the start.
#   limits:
#     lead: {dimension: duration, sense: at-least}
#     brief: {dimension: duration, sense: less-than}
#     lengths: {dimension: choice, sense: one-of}
#     by_hours: {dimension: choice, sense: one-of}
package policy.testing.closed_before

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.closed_before
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["derived", "tests", i, "closed_lead"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

exempt contains outcome if some outcome in radon_tests.long_term

exempt contains [t.id, "a monitor of this kind is judged by the hours that count"] if {
	some t in input.measurements.tests
	t.device in limits.by_hours.any_of
}

exempt contains [id, "a test this long needs no lead"] if {
	some [id, length] in lengths
	not length in limits.lengths.any_of
}

lengths contains [d.id, "brief"] if {
	some d in input.derived.tests
	d.duration.si < limits.brief.si
}

lengths contains [d.id, "longer"] if {
	some d in input.derived.tests
	d.duration.si >= limits.brief.si
}

judged contains t.id if {
	some t in input.measurements.tests
	t.id in radon_tests.after_short
	is_string(t.device)
	not t.device in limits.by_hours.any_of
	some [id, length] in lengths
	id == t.id
	length in limits.lengths.any_of
}

met contains d.id if {
	some d in input.derived.tests
	d.id in judged
	d.closed_lead.si >= limits.lead.si
}

deficient contains [d.id, ["derived", "tests", i, "closed_lead"], "lead"] if {
	some i, d in input.derived.tests
	d.id in judged
	d.closed_lead.si < limits.lead.si
}

missing contains gap if some gap in radon_tests.unsaid

missing contains gap if some gap in radon_tests.unsaid_kind

missing contains [t.id, ["measurements", "tests", i, "device"]] if {
	some i, t in input.measurements.tests
	not is_string(t.device)
}

missing contains [d.id, ["derived", "tests", i, "duration"]] if {
	some i, d in input.derived.tests
	not is_number(d.duration.si)
}

missing contains [d.id, ["derived", "tests", i, "closed_lead"]] if {
	some i, d in input.derived.tests
	not is_number(d.closed_lead.si)
}
