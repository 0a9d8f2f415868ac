# METADATA
# title: Two results side by side do not contradict each other about the action level
# description: When one is over and the other not half of it, neither can be trusted to say whether people are safe.
# custom:
#   subject: pair of devices
#   grade: required
#   stage: closeout
#   remedy: Throw both results out and test again.
#   limits:
#     level: {dimension: radon, sense: less-than}
#     ratio: {dimension: number, sense: at-most}
package policy.testing.duplicates_contradict

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.duplicates_contradict
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [d.id, ["derived", "duplicates", i, "ratio"]] if some i, d in input.derived.duplicates

exempt contains [id, reason] if {
	some [id, _] in subjects
	some reason in radon_tests.not_asked
}

# Only where somebody said that the job is about radon.
asked if input.job.contaminant in {"radon", "both"}

# Both results of a pair are known.
known contains concat("/", [a.id, b.id]) if {
	some b in input.measurements.tests
	some a in input.measurements.tests
	b.duplicate_of == a.id
	is_number(a.result.si)
	is_number(b.result.si)
}

straddling contains concat("/", [a.id, b.id]) if {
	some b in input.measurements.tests
	some a in input.measurements.tests
	b.duplicate_of == a.id
	a.result.si > limits.level.si
	b.result.si < limits.level.si
}

straddling contains concat("/", [a.id, b.id]) if {
	some b in input.measurements.tests
	some a in input.measurements.tests
	b.duplicate_of == a.id
	b.result.si > limits.level.si
	a.result.si < limits.level.si
}

met contains d.id if {
	asked
	some d in input.derived.duplicates
	d.id in known
	is_number(limits.level.si)
	not d.id in straddling
}

met contains d.id if {
	asked
	some d in input.derived.duplicates
	d.id in straddling
	d.ratio.si <= limits.ratio.si
}

deficient contains [d.id, ["derived", "duplicates", i, "ratio"], "ratio"] if {
	asked
	some i, d in input.derived.duplicates
	d.id in straddling
	d.ratio.si > limits.ratio.si
}

# No ratio can be told when the smaller of the two is zero.
undetermined contains [d.id, ["derived", "duplicates", i, "ratio"], "one of the two results is zero, the other over the action level"] if {
	asked
	some i, d in input.derived.duplicates
	d.id in straddling
	not is_number(d.ratio.si)
}

missing contains [id, ["job", "contaminant"]] if {
	some [id, _] in subjects
	not is_string(input.job.contaminant)
}

missing contains [d.id, ["derived", "duplicates", i, "ratio"]] if {
	some i, d in input.derived.duplicates
	not is_number(d.ratio.si)
}
