# METADATA
# title: Earlier radon results and the sketch of the site were looked at before design
# description: Where and how high it was decides what the system has to do.
# custom:
#   subject: diagnostics
#   grade: required
#   stage: planned
#   remedy: Ask for the earlier results and read them before the system is designed.
package policy.survey.earlier_results_reviewed

import rego.v2

subjects contains ["diagnostics", ["diagnostics", "earlier_results_reviewed"]]

met contains id if {
	some [id, _] in subjects
	input.diagnostics.earlier_results_reviewed == true
}

deficient contains [id, ["diagnostics", "earlier_results_reviewed"]] if {
	some [id, _] in subjects
	input.diagnostics.earlier_results_reviewed == false
}
