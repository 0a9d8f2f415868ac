# METADATA
# title: The level after the work leaves little to gain
# description: Between this level and the action level there is risk left that a small improvement may take away.
# custom:
#   subject: tests together
#   grade: recommended
#   stage: closeout
#   remedy: Talk with the owner about lowering the level further.
#   limits:
#     consider: {dimension: radon, sense: less-than}
#     action: {dimension: radon, sense: at-least}
package policy.testing.worth_lowering

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.worth_lowering
subjects contains ["measurements", ["derived", "radon", "after"]]

exempt contains [radon_tests.all, reason] if some reason in radon_tests.not_asked

exempt contains [radon_tests.all, "there is no test after the work, which another requirement asks for"] if radon_tests.none_after

# Only where somebody said that the job is about radon.
asked if input.job.contaminant in {"radon", "both"}

exempt contains [radon_tests.all, "the level reaches the action level, which another requirement judges"] if input.derived.radon.after.si >= limits.action.si

met contains radon_tests.all if {
	asked
	not radon_tests.none_after
	input.derived.radon.after.si < limits.consider.si
}

deficient contains [radon_tests.all, ["derived", "radon", "after"], "consider"] if {
	asked
	not radon_tests.none_after
	input.derived.radon.after.si >= limits.consider.si
}

missing contains [radon_tests.all, path] if some path in radon_tests.unsaid_of_all

missing contains [radon_tests.all, ["job", "contaminant"]] if not is_string(input.job.contaminant)

missing contains [radon_tests.all, ["derived", "radon", "after"]] if not is_number(input.derived.radon.after.si)
