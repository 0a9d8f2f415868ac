# METADATA
# title: Outdoor ports of a ventilator are far apart and stay clear
# description: A port that draws its own exhaust, or snow and leaves, brings in no fresh air.
# custom:
#   subject: ventilator
#   grade: required
#   stage: roughed-in
#   remedy: Move one of the ports, or raise it above drifts and leaves.
#   caution: Work from a ladder that is set and tied, away from power lines.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
#     minimum: {dimension: length, sense: at-least}
package policy.special.ventilator_outdoor_ports

import rego.v2

limits := data.profile.special.ventilator_outdoor_ports

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "ventilation", "outdoor_ports_clear"]] if some i, s in input.systems

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
	s.ventilation.outdoor_ports_clear == true
	s.ventilation.outdoor_port_distance.si >= limits.minimum.si
}

deficient contains [s.id, ["systems", i, "ventilation", "outdoor_ports_clear"]] if {
	some i, s in input.systems
	s.id in judged
	s.ventilation.outdoor_ports_clear == false
}

deficient contains [s.id, ["systems", i, "ventilation", "outdoor_port_distance"], "minimum"] if {
	some i, s in input.systems
	s.id in judged
	s.ventilation.outdoor_port_distance.si < limits.minimum.si
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "ventilation", "outdoor_ports_clear"]] if {
	some i, s in input.systems
	not is_boolean(s.ventilation.outdoor_ports_clear)
}

missing contains [s.id, ["systems", i, "ventilation", "outdoor_port_distance"]] if {
	some i, s in input.systems
	not is_number(s.ventilation.outdoor_port_distance.si)
}
