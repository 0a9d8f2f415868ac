# METADATA
# description: |
#   Which systems draw soil gas and which of them a fan drives, so that rules
#   about outlets and fans need not ask again. Nothing is concluded from a field
#   that is not recorded.
package policy.systems

import rego.v2

soil_kinds := {
	"sub-slab", "drain-tile", "block-wall", "sub-membrane",
	"crawlspace-depressurization", "baseboard-channel",
}

with_fan contains s.id if {
	some s in input.systems
	s.kind in soil_kinds
	s.powered_by == "fan"
}

without_outlet contains [s.id, "this kind of system lets out no soil gas"] if {
	some s in input.systems
	is_string(s.kind)
	not s.kind in soil_kinds
}

without_fan contains outcome if some outcome in without_outlet

without_fan contains [s.id, "no fan drives this system"] if {
	some s in input.systems
	is_string(s.powered_by)
	s.powered_by != "fan"
}

# True when the record lists its systems and none of them has a fan that draws
# soil gas.
none_with_fan if {
	is_array(input.systems)
	count(input.systems) == count({id | some [id, _] in without_fan})
}

# What the record leaves out that decides whether a system is meant.
unsaid contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

unsaid contains [s.id, ["systems", i, "powered_by"]] if {
	some i, s in input.systems
	not is_string(s.powered_by)
}

# Of a job as a whole: whether any of its systems has a fan, of whatever kind, and
# whether there is more than pipe that waits for one.
no_fan if {
	is_array(input.systems)
	count(input.systems) == count({s.id |
		some s in input.systems
		s.powered_by in {"passive", "rough-in"}
	})
}

fan_drives if {
	some s in input.systems
	s.powered_by == "fan"
}

only_roughed_in if {
	count(input.systems) > 0
	count(input.systems) == count({s.id |
		some s in input.systems
		s.powered_by == "rough-in"
	})
}

built if {
	some s in input.systems
	s.powered_by in {"fan", "passive"}
}

# What the record leaves out of all this.
unsaid_power contains ["systems", i, "powered_by"] if {
	some i, s in input.systems
	not is_string(s.powered_by)
}

unsaid_power contains ["systems"] if not is_array(input.systems)
