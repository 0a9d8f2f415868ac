# METADATA
# title: Safety data sheets for sealants and solvents are with a crew that knows them
# description: When somebody is overcome by fumes the sheet says what to do, if it is there.
# custom:
#   subject: crew
#   grade: required
#   stage: roughed-in
#   remedy: Bring the sheets for every product used and go through them with the crew.
#   caution: Air the work area and keep flames away from solvents.
package policy.safety.data_sheets

import rego.v2

subjects contains ["safety", ["safety", "sds_on_site"]]

exempt contains [id, "no solvents or sealants were used"] if {
	some [id, _] in subjects
	input.safety.solvents_used == false
}

met contains "safety" if {
	input.safety.solvents_used == true
	input.safety.sds_on_site == true
}

deficient contains ["safety", ["safety", "sds_on_site"]] if {
	input.safety.solvents_used == true
	input.safety.sds_on_site == false
}

missing contains ["safety", ["safety", "solvents_used"]] if not is_boolean(input.safety.solvents_used)

missing contains ["safety", ["safety", "sds_on_site"]] if not is_boolean(input.safety.sds_on_site)
