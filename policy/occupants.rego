# METADATA
# description: |
#   Whether a source speaks of a house whose people look after the system
#   themselves, or of one where somebody else does. Which it is has to be
#   recorded.
package policy.occupants

import rego.v2

# True when the source leaves this kind of occupancy out.
left_out(not_for) if input.house.occupancy in not_for

# True when the source speaks of it.
meant(not_for) if count(not_for) == 0

meant(not_for) if {
	is_string(input.house.occupancy)
	not input.house.occupancy in not_for
}

# True when the record does not say which it is and it matters.
untold(not_for) if {
	count(not_for) > 0
	not is_string(input.house.occupancy)
}
