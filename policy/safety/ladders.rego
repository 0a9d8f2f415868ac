# METADATA
# title: Ladders and scaffold are set safely
# description: Most deaths in small trades are falls, often from a ladder that was not tied.
# custom:
#   subject: crew
#   grade: hazard
#   stage: roughed-in
#   remedy: Set ladders on firm ground at the right slope, tie them, and keep clear of power lines.
#   caution: Stay off wet or icy roofs; fall protection is called for on most of them.
package policy.safety.ladders

import rego.v2

subjects contains ["safety", ["safety", "ladders_set"]]

exempt contains [id, "nobody worked at height"] if {
	some [id, _] in subjects
	input.safety.work_at_height == false
}

met contains "safety" if {
	input.safety.work_at_height == true
	input.safety.ladders_set == true
}

deficient contains ["safety", ["safety", "ladders_set"]] if {
	input.safety.work_at_height == true
	input.safety.ladders_set == false
}

missing contains ["safety", ["safety", "work_at_height"]] if not is_boolean(input.safety.work_at_height)

missing contains ["safety", ["safety", "ladders_set"]] if not is_boolean(input.safety.ladders_set)
