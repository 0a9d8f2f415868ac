# METADATA
# title: Dust is caught at the tool when concrete is drilled or cut
# description: A single core hole without it fills the basement with silica, for the crew and for those who sweep up.
# custom:
#   subject: crew
#   grade: hazard
#   stage: roughed-in
#   remedy: Drill with shroud and dust collector or with water, and clean up with a HEPA vacuum, not with a broom.
#   caution: Silica scars the lungs for good; stop the drill while dust is in sight.
#   limits:
#     methods: {dimension: choice, sense: one-of}
package policy.safety.dust_control

import rego.v2

methods := data.profile.safety.dust_control.methods.any_of

subjects contains ["safety", ["safety", "dust_control"]]

exempt contains [id, "no concrete was drilled or cut"] if {
	some [id, _] in subjects
	input.safety.concrete_drilled == false
}

met contains "safety" if {
	input.safety.concrete_drilled == true
	input.safety.dust_control in methods
}

deficient contains ["safety", ["safety", "dust_control"], "methods"] if {
	input.safety.concrete_drilled == true
	is_string(input.safety.dust_control)
	not input.safety.dust_control in methods
}

missing contains ["safety", ["safety", "concrete_drilled"]] if not is_boolean(input.safety.concrete_drilled)

missing contains ["safety", ["safety", "dust_control"]] if not is_string(input.safety.dust_control)
