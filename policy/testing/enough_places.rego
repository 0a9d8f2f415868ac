# METADATA
# title: There are enough tested places for the floor area
# description: One device in a long house can miss the wing where the gas comes in.
# custom:
#   subject: tests together
#   grade: required
#   stage: closeout
#   remedy: Test again with more devices at the same time, spread over the level.
#   limits:
#     each: {dimension: area, sense: at-most}
package policy.testing.enough_places

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.enough_places
subjects contains ["measurements", ["derived", "radon", "area_per_place"]]

exempt contains [radon_tests.all, reason] if some reason in radon_tests.not_asked

exempt contains [radon_tests.all, "there is no test after the work, which another requirement asks for"] if radon_tests.none_after

# Only where somebody said that the job is about radon.
asked if input.job.contaminant in {"radon", "both"}

met contains radon_tests.all if {
	asked
	not radon_tests.none_after
	input.derived.radon.area_per_place.si <= limits.each.si
}

deficient contains [radon_tests.all, ["derived", "radon", "area_per_place"], "each"] if {
	asked
	not radon_tests.none_after
	input.derived.radon.area_per_place.si > limits.each.si
}

missing contains [radon_tests.all, path] if some path in radon_tests.unsaid_of_all

missing contains [radon_tests.all, ["job", "contaminant"]] if not is_string(input.job.contaminant)

missing contains [radon_tests.all, ["derived", "radon", "area_per_place"]] if not is_number(input.derived.radon.area_per_place.si)
