# METADATA
# title: No heat-recovery ventilator stands in a room with crumbling asbestos
# description: Moving air carries loose fibers through the whole house.
# custom:
#   subject: ventilator
#   grade: hazard
#   stage: planned
#   remedy: Switch the ventilator off, keep out of the room, and put the unit elsewhere once an accredited person has cleared it.
#   caution: Do not touch or vacuum suspected asbestos; that is work for accredited people.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
package policy.special.ventilator_asbestos

import rego.v2

limits := data.profile.special.ventilator_asbestos

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "ventilation", "in_friable_asbestos_room"]] if some i, s in input.systems

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
	s.ventilation.in_friable_asbestos_room == false
}

deficient contains [s.id, ["systems", i, "ventilation", "in_friable_asbestos_room"]] if {
	some i, s in input.systems
	s.id in judged
	s.ventilation.in_friable_asbestos_room == true
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "ventilation", "in_friable_asbestos_room"]] if {
	some i, s in input.systems
	not is_boolean(s.ventilation.in_friable_asbestos_room)
}
