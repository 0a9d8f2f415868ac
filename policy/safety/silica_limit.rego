# METADATA
# title: Silica is held down by a listed dust control, or measured at or below the limit
# description: Silica scars the lungs for good, and the scars go on growing after the work has stopped.
# custom:
#   subject: crew
#   grade: hazard
#   stage: roughed-in
#   remedy: Stop dry drilling, fit shroud and collector or use water, and measure again.
#   caution: Silica scars the lungs for good; stop the drill while dust is in sight.
#   limits:
#     level: {dimension: number, sense: at-most}
#     methods: {dimension: choice, sense: one-of}
#     filter: {dimension: ratio, sense: at-least}
package policy.safety.silica_limit

import rego.v2

limits := data.profile.safety.silica_limit

subjects contains ["safety", ["safety", "silica_level_ugm3"]]

exempt contains [id, "no concrete was drilled or cut"] if {
	some [id, _] in subjects
	input.safety.concrete_drilled == false
}

# Dust control as listed stands in for measuring.
by_the_list if input.safety.dust_control in limits.methods.any_of

by_the_list if {
	input.safety.dust_control == "shroud-and-collector"
	input.safety.dust_filter_efficiency.si >= limits.filter.si
}

met contains "safety" if {
	input.safety.concrete_drilled == true
	by_the_list
}

met contains "safety" if {
	input.safety.concrete_drilled == true
	input.safety.silica_level_ugm3 <= limits.level.si
}

off_the_list if {
	is_string(input.safety.dust_control)
	input.safety.dust_control != "shroud-and-collector"
	not input.safety.dust_control in limits.methods.any_of
}

off_the_list if {
	input.safety.dust_control == "shroud-and-collector"
	not input.safety.dust_control in limits.methods.any_of
	input.safety.dust_filter_efficiency.si < limits.filter.si
}

deficient contains ["safety", ["safety", "silica_level_ugm3"], "level"] if {
	input.safety.concrete_drilled == true
	off_the_list
	input.safety.silica_level_ugm3 > limits.level.si
}

missing contains ["safety", ["safety", "concrete_drilled"]] if not is_boolean(input.safety.concrete_drilled)

missing contains ["safety", ["safety", "silica_level_ugm3"]] if not is_number(input.safety.silica_level_ugm3)

missing contains ["safety", ["safety", "dust_control"]] if not is_string(input.safety.dust_control)

missing contains ["safety", ["safety", "dust_filter_efficiency"]] if {
	input.safety.dust_control == "shroud-and-collector"
	not is_number(input.safety.dust_filter_efficiency.si)
}
