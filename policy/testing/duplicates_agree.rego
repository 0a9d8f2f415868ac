# METADATA
# title: Devices side by side agree as well as devices of this kind do
# description: When two devices in one place disagree, at least one of them is wrong, and nobody knows which.
# custom:
#   subject: pair of devices
#   grade: required
#   stage: closeout
#   remedy: Find out which device is at fault and test again with a new pair.
#   limits:
#     high: {dimension: radon, sense: at-least}
#     high_warning: {dimension: percent, sense: less-than}
#     high_control: {dimension: percent, sense: less-than}
#     middle: {dimension: radon, sense: at-least}
#     middle_warning: {dimension: percent, sense: less-than}
#     middle_control: {dimension: percent, sense: less-than}
#     low_difference: {dimension: radon, sense: at-most}
package policy.testing.duplicates_agree

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.duplicates_agree
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [d.id, ["derived", "duplicates", i, "relative_percent_difference"]] if some i, d in input.derived.duplicates

exempt contains [id, reason] if {
	some [id, _] in subjects
	some reason in radon_tests.not_asked
}

# Only where somebody said that the job is about radon.
asked if input.job.contaminant in {"radon", "both"}

# Two results below detection agree whatever their bounds are.
undetected contains concat("/", [t.duplicate_of, t.id]) if {
	some t in input.measurements.tests
	t.below_detection == true
	some other in input.measurements.tests
	other.id == t.duplicate_of
	other.below_detection == true
}

high contains d.id if {
	some d in input.derived.duplicates
	d.mean.si >= limits.high.si
}

middle contains d.id if {
	some d in input.derived.duplicates
	d.mean.si >= limits.middle.si
	d.mean.si < limits.high.si
}

low contains d.id if {
	some d in input.derived.duplicates
	d.mean.si < limits.middle.si
}

apart contains [d.id, ["derived", "duplicates", i, "relative_percent_difference"], "high_control"] if {
	some i, d in input.derived.duplicates
	d.id in high
	d.relative_percent_difference.si >= limits.high_control.si
}

apart contains [d.id, ["derived", "duplicates", i, "relative_percent_difference"], "middle_control"] if {
	some i, d in input.derived.duplicates
	d.id in middle
	d.relative_percent_difference.si >= limits.middle_control.si
}

apart contains [d.id, ["derived", "duplicates", i, "difference"], "low_difference"] if {
	some i, d in input.derived.duplicates
	d.id in low
	d.difference.si > limits.low_difference.si
}

met contains d.id if {
	asked
	some d in input.derived.duplicates
	d.id in undetected
}

met contains d.id if {
	asked
	some d in input.derived.duplicates
	d.id in high
	d.relative_percent_difference.si < limits.high_warning.si
}

met contains d.id if {
	asked
	some d in input.derived.duplicates
	d.id in middle
	d.relative_percent_difference.si < limits.middle_warning.si
}

met contains d.id if {
	asked
	some d in input.derived.duplicates
	d.id in low
	d.difference.si <= limits.low_difference.si
}

deficient contains [id, path, limit] if {
	asked
	some [id, path, limit] in apart
	not id in undetected
}

undetermined contains [d.id, ["derived", "duplicates", i, "relative_percent_difference"], "the difference is in the warning band, where one pair in twenty falls by chance"] if {
	asked
	some i, d in input.derived.duplicates
	is_number(d.relative_percent_difference.si)
	not d.id in low
	not d.id in met
	not d.id in {id | some [id, _, _] in apart}
}

missing contains [id, ["job", "contaminant"]] if {
	some [id, _] in subjects
	not is_string(input.job.contaminant)
}

missing contains [d.id, ["derived", "duplicates", i, "relative_percent_difference"]] if {
	some i, d in input.derived.duplicates
	not is_number(d.relative_percent_difference.si)
}
