# METADATA
# title: Silica in the air stays below the level from which it has to be watched
# description: Between this level and the limit a crew is close enough to harm to be measured again and again.
# custom:
#   subject: crew
#   grade: recommended
#   stage: roughed-in
#   remedy: Improve the dust control, or measure the exposure of the crew again at set intervals.
#   caution: Silica scars the lungs for good; stop the drill while dust is in sight.
#   limits:
#     level: {dimension: number, sense: less-than}
package policy.safety.silica_action_level

import rego.v2

level := data.profile.safety.silica_action_level.level.si

subjects contains ["safety", ["safety", "silica_level_ugm3"]]

exempt contains [id, "no concrete was drilled or cut"] if {
	some [id, _] in subjects
	input.safety.concrete_drilled == false
}

met contains "safety" if {
	input.safety.concrete_drilled == true
	input.safety.silica_level_ugm3 < level
}

deficient contains ["safety", ["safety", "silica_level_ugm3"], "level"] if {
	input.safety.concrete_drilled == true
	input.safety.silica_level_ugm3 >= level
}

missing contains ["safety", ["safety", "concrete_drilled"]] if not is_boolean(input.safety.concrete_drilled)

missing contains ["safety", ["safety", "silica_level_ugm3"]] if not is_number(input.safety.silica_level_ugm3)
