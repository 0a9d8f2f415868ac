# METADATA
# title: The filter of the dust collector holds back fine dust
# description: The dust that scars lungs is too fine to see and passes a common shop filter.
# custom:
#   subject: crew
#   grade: hazard
#   stage: roughed-in
#   remedy: Fit a filter of the efficiency asked for, with a way to clean it.
#   caution: Silica scars the lungs for good; stop the drill while dust is in sight.
#   limits:
#     minimum: {dimension: ratio, sense: at-least}
#     without: {dimension: choice, sense: one-of}
package policy.safety.dust_filter

import rego.v2

limits := data.profile.safety.dust_filter

subjects contains ["safety", ["safety", "dust_filter_efficiency"]]

exempt contains [id, "no concrete was drilled or cut"] if {
	some [id, _] in subjects
	input.safety.concrete_drilled == false
}

exempt contains [id, "no collector was used"] if {
	some [id, _] in subjects
	input.safety.dust_control in limits.without.any_of
}

collected if {
	input.safety.concrete_drilled == true
	is_string(input.safety.dust_control)
	not input.safety.dust_control in limits.without.any_of
}

met contains "safety" if {
	collected
	input.safety.dust_filter_efficiency.si >= limits.minimum.si
}

deficient contains ["safety", ["safety", "dust_filter_efficiency"], "minimum"] if {
	collected
	input.safety.dust_filter_efficiency.si < limits.minimum.si
}

missing contains ["safety", ["safety", "concrete_drilled"]] if not is_boolean(input.safety.concrete_drilled)

missing contains ["safety", ["safety", "dust_control"]] if not is_string(input.safety.dust_control)

missing contains ["safety", ["safety", "dust_filter_efficiency"]] if {
	not is_number(input.safety.dust_filter_efficiency.si)
}
