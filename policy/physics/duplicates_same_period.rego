# METADATA
# title: Devices side by side measured over the same period
# description: Two devices that measured on different days check nothing about each other.
# custom:
#   subject: pair of tests
#   grade: required
#   stage: closeout
#   remedy: Correct the times, or do not call the tests duplicates.
#   limits:
#     apart: {dimension: duration, sense: at-most}
package policy.physics.duplicates_same_period

import rego.v2

limits := data.profile.physics.duplicates_same_period

subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [d.id, ["derived", "duplicates", i, "start_difference"]] if some i, d in input.derived.duplicates

met contains d.id if {
	some d in input.derived.duplicates
	d.start_difference.si <= limits.apart.si
	d.end_difference.si <= limits.apart.si
}

deficient contains [d.id, ["derived", "duplicates", i, "start_difference"], "apart"] if {
	some i, d in input.derived.duplicates
	d.start_difference.si > limits.apart.si
}

deficient contains [d.id, ["derived", "duplicates", i, "end_difference"], "apart"] if {
	some i, d in input.derived.duplicates
	d.end_difference.si > limits.apart.si
}

untimed contains d.id if {
	some d in input.derived.duplicates
	not is_number(d.start_difference.si)
}

untimed contains d.id if {
	some d in input.derived.duplicates
	not is_number(d.end_difference.si)
}

undetermined contains [d.id, ["derived", "duplicates", i, "start_difference"], "the times of both tests are not all recorded"] if {
	some i, d in input.derived.duplicates
	d.id in untimed
}
