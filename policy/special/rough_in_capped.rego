# METADATA
# title: A roughed-in stub is capped
# description: An open stub is a pipe for soil gas straight into the basement.
# custom:
#   subject: system
#   grade: recommended
#   stage: roughed-in
#   remedy: Cap the stub airtight until it is put to use.
#   limits:
#     driven: {dimension: choice, sense: one-of}
package policy.special.rough_in_capped

import data.policy.systems
import rego.v2

limits := data.profile.special.rough_in_capped

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "rough_in", "capped"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "its source does not speak of systems driven this way"] if {
	some s in input.systems
	is_string(s.powered_by)
	not s.powered_by in limits.driven.any_of
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	s.powered_by in limits.driven.any_of
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.rough_in.capped == true
}

deficient contains [s.id, ["systems", i, "rough_in", "capped"]] if {
	some i, s in input.systems
	s.id in judged
	s.rough_in.capped == false
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "powered_by"]] if {
	some i, s in input.systems
	not is_string(s.powered_by)
}

missing contains [s.id, ["systems", i, "rough_in", "capped"]] if {
	some i, s in input.systems
	not is_boolean(s.rough_in.capped)
}
