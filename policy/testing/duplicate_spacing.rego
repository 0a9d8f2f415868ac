# METADATA
# title: Devices side by side stand at the right distance from each other
# description: Too far apart they measure two places; too close they take each other's air.
# custom:
#   subject: pair of devices
#   grade: required
#   stage: closeout
#   remedy: Repeat the pair at the distance called for.
#   limits:
#     minimum: {dimension: length, sense: at-least}
#     maximum: {dimension: length, sense: at-most}
package policy.testing.duplicate_spacing

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.duplicate_spacing
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [d.id, ["derived", "duplicates", i, "spacing"]] if some i, d in input.derived.duplicates

exempt contains [id, reason] if {
	some [id, _] in subjects
	some reason in radon_tests.not_asked
}

# Only where somebody said that the job is about radon.
asked if input.job.contaminant in {"radon", "both"}

met contains d.id if {
	asked
	some d in input.derived.duplicates
	d.spacing.si >= limits.minimum.si
	d.spacing.si <= limits.maximum.si
}

deficient contains [d.id, ["derived", "duplicates", i, "spacing"], "minimum"] if {
	asked
	some i, d in input.derived.duplicates
	d.spacing.si < limits.minimum.si
}

deficient contains [d.id, ["derived", "duplicates", i, "spacing"], "maximum"] if {
	asked
	some i, d in input.derived.duplicates
	d.spacing.si > limits.maximum.si
}

missing contains [id, ["job", "contaminant"]] if {
	some [id, _] in subjects
	not is_string(input.job.contaminant)
}

missing contains [d.id, ["derived", "duplicates", i, "spacing"]] if {
	some i, d in input.derived.duplicates
	not is_number(d.spacing.si)
}
