# METADATA
# title: The result is below the action level with its uncertainty counted
# description: A reading just under the limit may be a level just over it; the people in the house should hear that.
# custom:
#   subject: tests together
#   grade: recommended
#   stage: closeout
#   remedy: Test longer or with a second device, or lower the level further.
#   limits:
#     level: {dimension: radon, sense: less-than}
package policy.testing.surely_below

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.surely_below
subjects contains ["measurements", ["derived", "radon", "after_upper_bound"]]

exempt contains [radon_tests.all, reason] if some reason in radon_tests.not_asked

exempt contains [radon_tests.all, "there is no test after the work, which another requirement asks for"] if radon_tests.none_after

# Only where somebody said that the job is about radon.
asked if input.job.contaminant in {"radon", "both"}

met contains radon_tests.all if {
	asked
	not radon_tests.none_after
	input.derived.radon.after_upper_bound.si < limits.level.si
}

deficient contains [radon_tests.all, ["derived", "radon", "after_lower_bound"], "level"] if {
	asked
	not radon_tests.none_after
	input.derived.radon.after_lower_bound.si >= limits.level.si
}

undetermined contains [radon_tests.all, ["derived", "radon", "after_upper_bound"], "too close to call: the uncertainty of the result reaches across the level"] if {
	asked
	not radon_tests.none_after
	input.derived.radon.after_lower_bound.si < limits.level.si
	input.derived.radon.after_upper_bound.si >= limits.level.si
}

missing contains [radon_tests.all, path] if some path in radon_tests.unsaid_of_all

missing contains [radon_tests.all, ["job", "contaminant"]] if not is_string(input.job.contaminant)

missing contains [radon_tests.all, ["derived", "radon", "after_upper_bound"]] if not is_number(input.derived.radon.after_upper_bound.si)

missing contains [radon_tests.all, ["derived", "radon", "after_lower_bound"]] if not is_number(input.derived.radon.after_lower_bound.si)
