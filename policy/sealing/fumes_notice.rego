# METADATA
# title: The people in the house were told about fumes from sealants and solvents
# description: The smell lingers for days and can make infants, the old and the asthmatic ill.
# custom:
#   subject: notice
#   grade: recommended
#   stage: running
#   remedy: Tell the occupants before sealing, and air the rooms until the smell is gone.
#   caution: Sealants and foams give off vapor; air the room and keep flames away.
package policy.sealing.fumes_notice

import rego.v2

subjects contains ["closeout", ["closeout", "fumes_notice"]]

exempt contains [id, "no solvents or sealants were used"] if {
	some [id, _] in subjects
	input.safety.solvents_used == false
}

met contains "closeout" if {
	input.safety.solvents_used == true
	input.closeout.fumes_notice == true
}

deficient contains ["closeout", ["closeout", "fumes_notice"]] if {
	input.safety.solvents_used == true
	input.closeout.fumes_notice == false
}

missing contains ["closeout", ["safety", "solvents_used"]] if not is_boolean(input.safety.solvents_used)

missing contains ["closeout", ["closeout", "fumes_notice"]] if not is_boolean(input.closeout.fumes_notice)
