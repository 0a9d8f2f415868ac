# METADATA
# description: |
#   Which systems have a fan to be wired, of whatever kind the system is, and
#   how the fan is connected.
package policy.wiring

import rego.v2

judged contains s.id if {
	some s in input.systems
	s.powered_by == "fan"
}

outside contains [s.id, "no fan drives this system"] if {
	some s in input.systems
	is_string(s.powered_by)
	s.powered_by != "fan"
}

unsaid contains [s.id, ["systems", i, "powered_by"]] if {
	some i, s in input.systems
	not is_string(s.powered_by)
}

plugged contains s.id if {
	some s in input.systems
	s.electrical.connection == "plug-in"
}

fixed contains s.id if {
	some s in input.systems
	s.electrical.connection == "hard-wired"
}

# What the record leaves out of how the fan is connected and where it sits.
unwired contains [s.id, ["systems", i, "electrical", "connection"]] if {
	some i, s in input.systems
	not is_string(s.electrical.connection)
}

unplaced contains [s.id, ["systems", i, "fan", "place"]] if {
	some i, s in input.systems
	not is_string(s.fan.place)
}
