# METADATA
# title: Each radon test ends after it starts
# description: A test whose times run backwards was written down by guess, and so may be its result.
# custom:
#   subject: test
#   grade: required
#   stage: planned
#   remedy: Look the times up in the report of the device and correct the record.
#   limits:
#     above: {dimension: duration, sense: more-than}
package policy.physics.test_ends_after_start

import rego.v2

limits := data.profile.physics.test_ends_after_start

subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "end"]] if some i, t in input.measurements.tests

met contains d.id if {
	some d in input.derived.tests
	d.duration.si > limits.above.si
}

deficient contains [d.id, ["derived", "tests", i, "duration"], "above"] if {
	some i, d in input.derived.tests
	d.duration.si <= limits.above.si
}

missing contains [d.id, ["derived", "tests", i, "duration"]] if {
	some i, d in input.derived.tests
	not is_number(d.duration.si)
}
