# METADATA
# title: The owner knows how to look after the filters of a ventilator
# description: A clogged filter unbalances the flows, and then the ventilator can draw soil gas in.
# custom:
#   subject: ventilator
#   grade: required
#   stage: closeout
#   remedy: Show the owner how and how often to clean the filters, and leave it in writing.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
package policy.special.ventilator_filters

import rego.v2

limits := data.profile.special.ventilator_filters

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "ventilation", "filter_care_told"]] if some i, s in input.systems

exempt contains [s.id, "it is no heat-recovery ventilator"] if {
	some s in input.systems
	is_string(s.kind)
	not s.kind in limits.kinds.any_of
}

judged contains s.id if {
	some s in input.systems
	s.kind in limits.kinds.any_of
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.ventilation.filter_care_told == true
}

deficient contains [s.id, ["systems", i, "ventilation", "filter_care_told"]] if {
	some i, s in input.systems
	s.id in judged
	s.ventilation.filter_care_told == false
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "ventilation", "filter_care_told"]] if {
	some i, s in input.systems
	not is_boolean(s.ventilation.filter_care_told)
}
