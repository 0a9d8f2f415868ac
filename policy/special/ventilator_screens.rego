# METADATA
# title: Ports of a ventilator are screened indoors and outdoors
# description: Insects, leaves and children find every open duct.
# custom:
#   subject: ventilator
#   grade: required
#   stage: running
#   remedy: Fit screens that can be taken off and cleaned.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
package policy.special.ventilator_screens

import rego.v2

limits := data.profile.special.ventilator_screens

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "ventilation", "ports_screened"]] if some i, s in input.systems

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
	s.ventilation.ports_screened == true
}

deficient contains [s.id, ["systems", i, "ventilation", "ports_screened"]] if {
	some i, s in input.systems
	s.id in judged
	s.ventilation.ports_screened == false
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "ventilation", "ports_screened"]] if {
	some i, s in input.systems
	not is_boolean(s.ventilation.ports_screened)
}
