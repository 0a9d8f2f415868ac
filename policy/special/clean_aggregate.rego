# METADATA
# title: Aggregate below the slab is clean and of even size
# description: Fines fill the gaps that the air has to pass.
# custom:
#   subject: system
#   grade: required
#   stage: roughed-in
#   remedy: Have the fill replaced by stone that passes a 2 in sieve and stays on a 1/4 in sieve.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
#     not_for: {dimension: choice, sense: none-of}
package policy.special.clean_aggregate

import data.policy.houses
import rego.v2

limits := data.profile.special.clean_aggregate

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "rough_in", "aggregate_clean"]] if some i, s in input.systems

exempt contains [s.id, "its source asks this of other kinds of system"] if {
	some s in input.systems
	is_string(s.kind)
	not s.kind in limits.kinds.any_of
}

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(limits.not_for.any_of)
}

exempt contains [s.id, "another kind of layer lies below the slab"] if {
	some s in input.systems
	is_string(s.rough_in.layer)
	s.rough_in.layer != "aggregate"
}

judged contains s.id if {
	some s in input.systems
	s.kind in limits.kinds.any_of
	houses.meant(limits.not_for.any_of)
	s.rough_in.layer == "aggregate"
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.rough_in.aggregate_clean == true
}

deficient contains [s.id, ["systems", i, "rough_in", "aggregate_clean"]] if {
	some i, s in input.systems
	s.id in judged
	s.rough_in.aggregate_clean == false
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(limits.not_for.any_of)
}

missing contains [s.id, ["systems", i, "rough_in", "layer"]] if {
	some i, s in input.systems
	not is_string(s.rough_in.layer)
}

missing contains [s.id, ["systems", i, "rough_in", "aggregate_clean"]] if {
	some i, s in input.systems
	not is_boolean(s.rough_in.aggregate_clean)
}
