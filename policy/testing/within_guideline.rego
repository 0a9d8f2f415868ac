# METADATA
# title: The level after the work is within the guideline
# description: This is what the job is for. Over it, the people in the house go on breathing too much radon.
# custom:
#   subject: tests together
#   grade: hazard
#   stage: closeout
#   remedy: Find out why with pressure readings at the slab, improve the system, and test again.
#   caution: High radon harms over years; keep time in the lowest rooms short and air them until it is down.
#   limits:
#     level: {dimension: radon, sense: at-most}
package policy.testing.within_guideline

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.within_guideline
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
