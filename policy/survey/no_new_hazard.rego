# METADATA
# title: The design creates no new hazard, moisture, noise or waste of energy
# description: A system that lowers radon and draws flue gas or keeps somebody awake gets switched off.
# custom:
#   subject: system
#   grade: required
#   stage: planned
#   remedy: Change the design until the trouble it causes is gone.
package policy.survey.no_new_hazard

import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "new_hazard_created"]] if some i, s in input.systems

met contains s.id if {
	some s in input.systems
	s.new_hazard_created == false
}

deficient contains [s.id, ["systems", i, "new_hazard_created"]] if {
	some i, s in input.systems
	s.new_hazard_created == true
}
