# METADATA
# title: The people in the new house got a long-term test kit
# description: A new house dries and settles; the level of the first year tells more than that of two days.
# custom:
#   subject: tests together
#   grade: required
#   stage: closeout
#   remedy: Hand over a kit for each dwelling, with instructions.
package policy.testing.long_term_kit

import data.policy.radon_tests
import rego.v2

subjects contains ["measurements", ["measurements", "long_term_kit_given"]]

exempt contains [id, reason] if {
	some [id, _] in subjects
	some reason in radon_tests.not_asked
}

exempt contains [id, "the house is not new"] if {
	some [id, _] in subjects
	input.house.new_construction == false
}

asked if {
	input.job.contaminant in {"radon", "both"}
	input.house.new_construction == true
}

met contains radon_tests.all if {
	asked
	input.measurements.long_term_kit_given == true
}

deficient contains [radon_tests.all, ["measurements", "long_term_kit_given"]] if {
	asked
	input.measurements.long_term_kit_given == false
}

missing contains [id, ["job", "contaminant"]] if {
	some [id, _] in subjects
	not is_string(input.job.contaminant)
}

missing contains [radon_tests.all, ["house", "new_construction"]] if not is_boolean(input.house.new_construction)

missing contains [radon_tests.all, ["measurements", "long_term_kit_given"]] if not is_boolean(input.measurements.long_term_kit_given)
