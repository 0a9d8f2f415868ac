# METADATA
# title: Safety data sheets are at hand for whoever asks
# description: A parent or a doctor who asks what was used in the house gets an answer.
# custom:
#   subject: closeout papers
#   grade: required
#   stage: closeout
#   remedy: Keep the data sheets of all products used where they can be sent out at once.
package policy.papers.data_sheets_on_request

import rego.v2

subjects contains ["closeout", ["closeout", "sds_available"]]

exempt contains [id, "no solvents or sealants were used"] if {
	some [id, _] in subjects
	input.safety.solvents_used == false
}

met contains "closeout" if {
	input.safety.solvents_used == true
	input.closeout.sds_available == true
}

deficient contains ["closeout", ["closeout", "sds_available"]] if {
	input.safety.solvents_used == true
	input.closeout.sds_available == false
}

missing contains ["closeout", ["safety", "solvents_used"]] if not is_boolean(input.safety.solvents_used)

missing contains ["closeout", ["closeout", "sds_available"]] if not is_boolean(input.closeout.sds_available)
