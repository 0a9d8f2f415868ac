# METADATA
# title: Two results side by side lie on the same side of the action level
# description: The mean of one result over and one under the level hides that one device called for action.
# custom:
#   subject: pair of devices
#   grade: recommended
#   stage: closeout
#   remedy: Do not average the two; go by the higher, or test again with a new pair.
#   limits:
#     level: {dimension: radon, sense: less-than}
package policy.testing.duplicates_one_side

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.duplicates_one_side
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [d.id, ["derived", "duplicates", i, "mean"]] if some i, d in input.derived.duplicates

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
	a.result.si >= limits.level.si
	b.result.si < limits.level.si
}

straddling contains concat("/", [a.id, b.id]) if {
	some b in input.measurements.tests
	some a in input.measurements.tests
	b.duplicate_of == a.id
	b.result.si >= limits.level.si
	a.result.si < limits.level.si
}

met contains d.id if {
	asked
	some d in input.derived.duplicates
	d.id in known
	is_number(limits.level.si)
	not d.id in straddling
}

deficient contains [d.id, ["derived", "duplicates", i, "mean"], "level"] if {
	asked
	some i, d in input.derived.duplicates
	d.id in straddling
}

missing contains [id, ["job", "contaminant"]] if {
	some [id, _] in subjects
	not is_string(input.job.contaminant)
}

missing contains [d.id, ["derived", "duplicates", i, "mean"]] if {
	some i, d in input.derived.duplicates
	not is_number(d.mean.si)
}
