# METADATA
# description: |
#   Whether a source speaks of a house of this age. A source for new houses says
#   nothing of old ones; which of them this is has to be recorded.
package policy.houses

import rego.v2

age contains "new" if input.house.new_construction == true

age contains "existing" if input.house.new_construction == false

# True when the source leaves this house out.
left_out(not_for) if {
	some a in age
	a in not_for
}

# True when the source speaks of this house.
meant(not_for) if count(not_for) == 0

meant(not_for) if {
	some a in age
	not a in not_for
}

# True when the record does not say which of the two it is and it matters.
untold(not_for) if {
	count(not_for) > 0
	count(age) == 0
}
