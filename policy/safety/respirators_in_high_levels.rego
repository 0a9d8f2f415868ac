# METADATA
# title: Respirators are worn where decay products are very high
# description: At such levels a working day gives the lungs what others get in years.
# custom:
#   subject: crew
#   grade: recommended
#   stage: running
#   remedy: Leave, air the place, and go back in with respirators only.
#   caution: A respirator protects only after fit test and training.
#   limits:
#     level: {dimension: number, sense: at-most}
package policy.safety.respirators_in_high_levels

import rego.v2

level := data.profile.safety.respirators_in_high_levels.level.si

subjects contains ["safety", ["safety", "respirators_used"]]

exempt contains [id, "decay products stay below that level"] if {
	some [id, _] in subjects
	input.safety.working_level <= level
}

met contains "safety" if {
	input.safety.working_level > level
	input.safety.respirators_used == true
}

deficient contains ["safety", ["safety", "respirators_used"]] if {
	input.safety.working_level > level
	input.safety.respirators_used == false
}

missing contains ["safety", ["safety", "working_level"]] if not is_number(input.safety.working_level)

missing contains ["safety", ["safety", "respirators_used"]] if not is_boolean(input.safety.respirators_used)
