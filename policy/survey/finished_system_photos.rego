# METADATA
# title: Photos of the reachable parts of the finished system were taken
# description: Behind a finished wall a photo is all that is left to look at.
# custom:
#   subject: system
#   grade: required
#   stage: closeout
#   remedy: Take photos of every part that can be reached, before it is covered.
package policy.survey.finished_system_photos

import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "commissioning", "photos_taken"]] if some i, s in input.systems

met contains s.id if {
	some s in input.systems
	s.commissioning.photos_taken == true
}

deficient contains [s.id, ["systems", i, "commissioning", "photos_taken"]] if {
	some i, s in input.systems
	s.commissioning.photos_taken == false
}
