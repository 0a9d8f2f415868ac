# METADATA
# title: A device sent through a known level reads close to it
# description: A kind of device that misses a known level misses the level in the house too.
# custom:
#   subject: spiked device
#   grade: required
#   stage: closeout
#   remedy: Take the kind of device out of use until the cause is found, and look at the tests made with it.
#   limits:
#     warning_below: {dimension: percent, sense: at-least}
#     warning_above: {dimension: percent, sense: at-most}
#     control_below: {dimension: percent, sense: at-least}
#     control_above: {dimension: percent, sense: at-most}
package policy.testing.spikes_agree

import rego.v2

limits := data.profile.testing.spikes_agree

# Spiked devices belong to a testing business, not to every job: a record
# without any has nothing to judge.
subjects contains [d.id, ["derived", "spikes", i, "relative_error"]] if some i, d in input.derived.spikes

met contains d.id if {
	some d in input.derived.spikes
	d.relative_error.si >= limits.warning_below.si
	d.relative_error.si <= limits.warning_above.si
}

deficient contains [d.id, ["derived", "spikes", i, "relative_error"], "control_below"] if {
	some i, d in input.derived.spikes
	d.relative_error.si < limits.control_below.si
}

deficient contains [d.id, ["derived", "spikes", i, "relative_error"], "control_above"] if {
	some i, d in input.derived.spikes
	d.relative_error.si > limits.control_above.si
}

undetermined contains [d.id, ["derived", "spikes", i, "relative_error"], "the error is in the warning band"] if {
	some i, d in input.derived.spikes
	d.relative_error.si >= limits.control_below.si
	d.relative_error.si <= limits.control_above.si
	not d.id in met
}
