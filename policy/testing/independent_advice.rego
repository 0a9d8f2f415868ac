# METADATA
# title: An independent test was advised and a copy of its result asked for
# description: Whoever is paid for the system should not be the only one to say that it works.
# custom:
#   subject: tests together
#   grade: recommended
#   stage: closeout
#   remedy: Advise the owner in writing to have somebody else test, and ask for a copy of the result.
package policy.testing.independent_advice

import data.policy.radon_tests
import rego.v2

subjects contains ["measurements", ["measurements", "independent_test_advised"]]

exempt contains [id, reason] if {
	some [id, _] in subjects
	some reason in radon_tests.not_asked
}

asked if input.job.contaminant in {"radon", "both"}

met contains radon_tests.all if {
	asked
	input.measurements.independent_test_advised == true
	input.closeout.result_copy_received == true
}

deficient contains [radon_tests.all, ["measurements", "independent_test_advised"]] if {
	asked
	input.measurements.independent_test_advised == false
}

deficient contains [radon_tests.all, ["closeout", "result_copy_received"]] if {
	asked
	input.closeout.result_copy_received == false
}

missing contains [id, ["job", "contaminant"]] if {
	some [id, _] in subjects
	not is_string(input.job.contaminant)
}

missing contains [radon_tests.all, ["measurements", "independent_test_advised"]] if not is_boolean(input.measurements.independent_test_advised)

missing contains [radon_tests.all, ["closeout", "result_copy_received"]] if not is_boolean(input.closeout.result_copy_received)
