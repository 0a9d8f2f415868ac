# METADATA
# title: A temporary system is replaced in time
# description: Makeshift work leaks, gets unplugged and is forgotten, and radon comes back.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Put in the permanent system, or record the renovation or change of use that keeps it waiting.
#   limits:
#     maximum: {dimension: duration, sense: at-most}
#     excuses: {dimension: choice, sense: one-of}
package policy.special.temporary_replaced

import rego.v2

limits := data.profile.special.temporary_replaced

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "replaced_on"]] if some i, s in input.systems

exempt contains [s.id, "the system is permanent"] if {
	some s in input.systems
	s.permanence == "permanent"
}

exempt contains [s.id, "the delay has a reason that counts"] if {
	some s in input.systems
	s.id in late
	s.replacement_delay_reason in limits.excuses.any_of
}

late contains d.id if {
	some d in input.derived.systems
	d.temporary_days.si > limits.maximum.si
}

met contains d.id if {
	some s in input.systems
	s.permanence == "temporary"
	some d in input.derived.systems
	d.id == s.id
	d.temporary_days.si <= limits.maximum.si
}

deficient contains [d.id, ["derived", "systems", i, "temporary_days"], "maximum"] if {
	some s in input.systems
	s.permanence == "temporary"
	is_string(s.replacement_delay_reason)
	not s.replacement_delay_reason in limits.excuses.any_of
	some i, d in input.derived.systems
	d.id == s.id
	d.id in late
}

missing contains [s.id, ["systems", i, "permanence"]] if {
	some i, s in input.systems
	not is_string(s.permanence)
}

missing contains [s.id, ["systems", i, "temporary_since"]] if {
	some i, s in input.systems
	not is_number(s.temporary_since.si)
}

missing contains [s.id, ["systems", i, "replaced_on"]] if {
	some i, s in input.systems
	not is_number(s.replaced_on.si)
}

missing contains [s.id, ["systems", i, "replacement_delay_reason"]] if {
	some i, s in input.systems
	s.id in late
	not is_string(s.replacement_delay_reason)
}
