# METADATA
# title: The level after the work is within the reference level for the world
# description: Radon harms below the national action levels too; the owner should know how far below the house is.
# custom:
#   subject: tests together
#   grade: recommended
#   stage: closeout
#   remedy: Tell the owner what the level means, and what a better seal or a second suction point would bring.
#   limits:
#     level: {dimension: radon, sense: at-most}
package policy.testing.world_reference_level

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.world_reference_level
subjects contains ["measurements", ["derived", "radon", "after"]]

exempt contains [radon_tests.all, reason] if some reason in radon_tests.not_asked

exempt contains [radon_tests.all, "there is no test after the work, which another requirement asks for"] if radon_tests.none_after

# Only where somebody said that the job is about radon.
asked if input.job.contaminant in {"radon", "both"}

met contains radon_tests.all if {
	asked
	not radon_tests.none_after
	input.derived.radon.after.si <= limits.level.si
}

deficient contains [radon_tests.all, ["derived", "radon", "after"], "level"] if {
	asked
	not radon_tests.none_after
	input.derived.radon.after.si > limits.level.si
}

missing contains [radon_tests.all, path] if some path in radon_tests.unsaid_of_all

missing contains [radon_tests.all, ["job", "contaminant"]] if not is_string(input.job.contaminant)

missing contains [radon_tests.all, ["derived", "radon", "after"]] if not is_number(input.derived.radon.after.si)
