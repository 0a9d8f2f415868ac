# METADATA
# title: The system is permanent, or declared temporary from a stated day
# description: What is neither meant to last nor known to end is nobody's to mend.
# custom:
#   subject: system
#   grade: required
#   stage: planned
#   remedy: Record whether the system is to stay; if it is not, record the day it started.
package policy.special.permanence

import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "permanence"]] if some i, s in input.systems

met contains s.id if {
	some s in input.systems
	s.permanence == "permanent"
	is_string(input.job.purpose)
	input.job.purpose != "temporary-system"
}

met contains s.id if {
	some s in input.systems
	s.permanence == "temporary"
	is_number(s.temporary_since.si)
}

deficient contains [s.id, ["systems", i, "permanence"]] if {
	some i, s in input.systems
	s.permanence == "permanent"
	input.job.purpose == "temporary-system"
}

missing contains [s.id, ["systems", i, "permanence"]] if {
	some i, s in input.systems
	not is_string(s.permanence)
}

missing contains [s.id, ["job", "purpose"]] if {
	some s in input.systems
	s.permanence == "permanent"
	not is_string(input.job.purpose)
}

missing contains [s.id, ["systems", i, "temporary_since"]] if {
	some i, s in input.systems
	s.permanence == "temporary"
	not is_number(s.temporary_since.si)
}
