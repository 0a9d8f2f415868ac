# METADATA
# title: A rough-in keeps a clear space for a later fan
# description: A pipe boxed in by framing and ducts costs more to activate than it saved.
# custom:
#   subject: rough-in
#   grade: required
#   stage: roughed-in
#   remedy: Clear the space round the pipe where the fan will go, and mark it.
#   limits:
#     diameter: {dimension: length, sense: at-least}
#     height: {dimension: length, sense: at-least}
package policy.fan.reserved_space

import rego.v2

limits := data.profile.fan.reserved_space

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "reserved_diameter"]] if some i, s in input.systems

exempt contains [s.id, "the system is not a rough-in"] if {
	some s in input.systems
	is_string(s.powered_by)
	s.powered_by != "rough-in"
}

met contains s.id if {
	some s in input.systems
	s.powered_by == "rough-in"
	s.fan.reserved_diameter.si >= limits.diameter.si
	s.fan.reserved_height.si >= limits.height.si
}

deficient contains [s.id, ["systems", i, "fan", "reserved_diameter"], "diameter"] if {
	some i, s in input.systems
	s.powered_by == "rough-in"
	s.fan.reserved_diameter.si < limits.diameter.si
}

deficient contains [s.id, ["systems", i, "fan", "reserved_height"], "height"] if {
	some i, s in input.systems
	s.powered_by == "rough-in"
	s.fan.reserved_height.si < limits.height.si
}

missing contains [s.id, ["systems", i, "powered_by"]] if {
	some i, s in input.systems
	not is_string(s.powered_by)
}

missing contains [s.id, ["systems", i, "fan", "reserved_diameter"]] if {
	some i, s in input.systems
	not is_number(s.fan.reserved_diameter.si)
}

missing contains [s.id, ["systems", i, "fan", "reserved_height"]] if {
	some i, s in input.systems
	not is_number(s.fan.reserved_height.si)
}
