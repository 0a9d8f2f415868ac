# METADATA
# title: The roughed-in pipe opens into enough granular fill and is capped airtight
# description: An end pressed into clay draws nothing later; an open stub lets soil gas in until then.
# custom:
#   subject: system
#   grade: required
#   stage: roughed-in
#   remedy: Surround the end with granular fill before the slab is poured, and cap the stub.
#   limits:
#     fill: {dimension: length, sense: at-least}
#     not_for: {dimension: choice, sense: not-for}
package policy.pipe.rough_in_inlet

import data.policy.houses
import data.policy.systems
import rego.v2

limits := data.profile.pipe.rough_in_inlet

subjects contains ["systems", ["systems"]] if not is_array(input.systems)
subjects contains [s.id, ["systems", i, "rough_in", "inlet_cover"]] if some i, s in input.systems
exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "it is not a pipe waiting for use"] if {
	some s in input.systems
	is_string(s.powered_by)
	s.powered_by != "rough-in"
}

exempt contains [s.id, "its source does not speak of a house of this age"] if {
	some s in input.systems
	houses.left_out(limits.not_for.any_of)
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	s.powered_by == "rough-in"
	houses.meant(limits.not_for.any_of)
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.rough_in.inlet_cover.si >= limits.fill.si
	s.rough_in.capped == true
}

deficient contains [s.id, ["systems", i, "rough_in", "inlet_cover"], "fill"] if {
	some i, s in input.systems
	s.id in judged
	s.rough_in.inlet_cover.si < limits.fill.si
}

deficient contains [s.id, ["systems", i, "rough_in", "capped"]] if {
	some i, s in input.systems
	s.id in judged
	s.rough_in.capped == false
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["house", "new_construction"]] if {
	some s in input.systems
	houses.untold(limits.not_for.any_of)
}

missing contains [s.id, ["systems", i, "rough_in", "inlet_cover"]] if {
	some i, s in input.systems
	not is_number(s.rough_in.inlet_cover.si)
}

missing contains [s.id, ["systems", i, "rough_in", "capped"]] if {
	some i, s in input.systems
	not is_boolean(s.rough_in.capped)
}
