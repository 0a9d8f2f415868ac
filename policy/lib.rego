# METADATA
# description: |
#   The verdict on one subject from the outcome sets of one requirement. A
#   subject of which the sets say nothing is unrecorded, so that forgetting a
#   case never passes a job.
package policy.lib

import rego.v2

verdict(sets, subject) := "not-applicable" if {
	named(sets.exempt, subject)
} else := "deficient" if {
	named(sets.deficient, subject)
} else := "met" if {
	subject in sets.met
} else := "undetermined" if {
	named(sets.undetermined, subject)
} else := "unrecorded" if {
	named(sets.subjects, subject)
}

named(outcomes, subject) if {
	some outcome in outcomes
	outcome[0] == subject
}
