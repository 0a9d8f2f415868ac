# METADATA
# title: The work area is aired, or the crew wears respirators
# description: In a closed basement dust, fumes and radon add up within the hour.
# custom:
#   subject: crew
#   grade: hazard
#   stage: roughed-in
#   remedy: Blow air through the work area to outdoors; where that cannot be done, wear respirators.
#   caution: A respirator protects only after fit test and training.
package policy.safety.aired_or_respirators

import rego.v2

subjects contains ["safety", ["safety", "work_area_ventilated"]]

met contains "safety" if input.safety.work_area_ventilated == true

met contains "safety" if input.safety.respirators_used == true

deficient contains ["safety", ["safety", "respirators_used"]] if {
	input.safety.work_area_ventilated == false
	input.safety.respirators_used == false
}

missing contains ["safety", ["safety", "work_area_ventilated"]] if not is_boolean(input.safety.work_area_ventilated)

missing contains ["safety", ["safety", "respirators_used"]] if {
	input.safety.work_area_ventilated == false
	not is_boolean(input.safety.respirators_used)
}
