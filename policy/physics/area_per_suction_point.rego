# METADATA
# title: Suction was shown to reach everywhere, or no suction point serves more area than its fill allows
# description: Soil gas comes up where suction does not reach, often under the bedroom farthest from the pipe.
# custom:
#   subject: system
#   grade: recommended
#   stage: planned
#   remedy: Test how far suction reaches, or add suction points.
#   caution: Drilling concrete raises silica dust; use a shroud with dust collector or water.
#   limits:
#     reach: {dimension: ratio, sense: at-least}
#     open_fills: {dimension: choice, sense: applies-to}
#     open_area: {dimension: area, sense: at-most}
#     poor_fills: {dimension: choice, sense: applies-to}
#     poor_area: {dimension: area, sense: at-most}
#     tight_fills: {dimension: choice, sense: applies-to}
#     tight_area: {dimension: area, sense: at-most}
#     kinds: {dimension: choice, sense: applies-to}
package policy.physics.area_per_suction_point

import data.policy.slabs
import rego.v2

limits := data.profile.physics.area_per_suction_point

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "area_per_suction_point"]] if some i, s in input.systems

exempt contains [s.id, "systems of this kind are sized in another way"] if {
	some s in input.systems
	is_string(s.kind)
	is_array(limits.kinds.any_of)
	not s.kind in limits.kinds.any_of
}

# What was measured comes before what the fill promises.
shown contains s.id if {
	some s in input.systems
	s.kind in limits.kinds.any_of
	count(s.foundations) > 0
	count({area |
		some area in s.foundations
		some [reached, share] in slabs.reached
		reached == area
		share >= limits.reach.si
	}) == count({area | some area in s.foundations})
}

tight contains id if {
	some [id, fill] in slabs.fills
	fill in limits.tight_fills.any_of
}

poor contains id if {
	some [id, fill] in slabs.fills
	fill in limits.poor_fills.any_of
	not id in tight
}

open contains id if {
	some [id, fill] in slabs.fills
	fill in limits.open_fills.any_of
	not id in tight
	not id in poor
}

judged contains s.id if {
	some s in input.systems
	s.kind in limits.kinds.any_of
	s.id in slabs.told
}

served contains [d.id, d.area_per_suction_point.si, limits.tight_area.si, "tight_area"] if {
	some d in input.derived.systems
	d.id in judged
	d.id in tight
}

served contains [d.id, d.area_per_suction_point.si, limits.poor_area.si, "poor_area"] if {
	some d in input.derived.systems
	d.id in judged
	d.id in poor
}

served contains [d.id, d.area_per_suction_point.si, limits.open_area.si, "open_area"] if {
	some d in input.derived.systems
	d.id in judged
	d.id in open
}

met contains id if some id in shown

met contains id if {
	some [id, area, most, _] in served
	area <= most
}

deficient contains [d.id, ["derived", "systems", i, "area_per_suction_point"], limit] if {
	some i, d in input.derived.systems
	some [id, area, most, limit] in served
	id == d.id
	not id in shown
	area > most
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains gap if some gap in slabs.untold

missing contains [d.id, ["derived", "systems", i, "area_per_suction_point"]] if {
	some i, d in input.derived.systems
	not is_number(d.area_per_suction_point.si)
}
