# METADATA
# title: Earlier radon results and the sketch of the site were looked at before design
# description: Where and how high it was decides what the system has to do.
# custom:
#   subject: diagnostics
#   grade: required
#   stage: planned
#   remedy: Ask for the earlier results and read them before the system is designed.
package policy.survey.earlier_results_reviewed

import data.policy.radon_tests
import rego.v2

subjects contains ["diagnostics", ["diagnostics", "earlier_results_reviewed"]]

exempt contains [id, "a house that is being built has no earlier results"] if {
	some [id, _] in subjects
	radon_tests.new_and_untested
}

asked if input.house.new_construction == false

asked if {
	some t in input.measurements.tests
	t.phase == "before"
}

met contains "diagnostics" if {
	asked
	input.diagnostics.earlier_results_reviewed == true
}

deficient contains ["diagnostics", ["diagnostics", "earlier_results_reviewed"]] if {
	asked
	input.diagnostics.earlier_results_reviewed == false
}

missing contains ["diagnostics", ["house", "new_construction"]] if {
	not asked
	not is_boolean(input.house.new_construction)
}

missing contains ["diagnostics", ["measurements", "tests"]] if {
	not asked
	not is_array(input.measurements.tests)
}

missing contains ["diagnostics", ["measurements", "tests", i, "phase"]] if {
	not asked
	some i, t in input.measurements.tests
	not is_string(t.phase)
}

missing contains ["diagnostics", ["diagnostics", "earlier_results_reviewed"]] if {
	not is_boolean(input.diagnostics.earlier_results_reviewed)
}
