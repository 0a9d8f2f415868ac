# METADATA
# title: Indoor supply and exhaust of a ventilator are far apart
# description: Ports close together swap the same air back and forth and leave the rest of the house as it was.
# custom:
#   subject: ventilator
#   grade: required
#   stage: roughed-in
#   remedy: Move one of the ports.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
#     minimum: {dimension: length, sense: at-least}
package policy.special.ventilator_indoor_ports

import rego.v2

limits := data.profile.special.ventilator_indoor_ports

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "ventilation", "indoor_port_distance"]] if some i, s in input.systems

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
	s.ventilation.indoor_port_distance.si >= limits.minimum.si
}

deficient contains [s.id, ["systems", i, "ventilation", "indoor_port_distance"], "minimum"] if {
	some i, s in input.systems
	s.id in judged
	s.ventilation.indoor_port_distance.si < limits.minimum.si
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "ventilation", "indoor_port_distance"]] if {
	some i, s in input.systems
	not is_number(s.ventilation.indoor_port_distance.si)
}
