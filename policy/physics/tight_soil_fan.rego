# METADATA
# title: A fan on clay pulls hard enough for tight soil
# description: In clay a usual fan holds the soil gas back for a few feet round the hole and nowhere else.
# custom:
#   subject: fan
#   grade: recommended
#   stage: planned
#   remedy: Use a fan made for tight soil, or show with the system's own fan that suction reaches across the slab.
#   limits:
#     minimum: {dimension: pressure, sense: at-least}
#     fills: {dimension: choice, sense: applies-to}
#     reach: {dimension: ratio, sense: at-least}
#     kinds: {dimension: choice, sense: applies-to}
package policy.physics.tight_soil_fan

import data.policy.airways
import data.policy.slabs
import data.policy.systems
import rego.v2

limits := data.profile.physics.tight_soil_fan

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "shutoff_pressure"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "systems of this kind are sized in another way"] if {
	some s in input.systems
	is_string(s.kind)
	is_array(limits.kinds.any_of)
	not s.kind in limits.kinds.any_of
}

exempt contains [s.id, "no tight soil lies under the areas it treats"] if {
	some s in input.systems
	s.id in slabs.told
	is_array(limits.fills.any_of)
	not s.id in tight
}

exempt contains [s.id, "its own fan was shown to reach under every area it treats"] if {
	some s in input.systems
	count(s.foundations) > 0
	count({area |
		some area in s.foundations
		some [system, shown, share] in slabs.reached_by
		system == s.id
		shown == area
		share >= limits.reach.si
	}) == count({area | some area in s.foundations})
}

tight contains id if {
	some [id, fill] in slabs.fills
	fill in limits.fills.any_of
}

judged contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.kind in limits.kinds.any_of
	s.id in tight
	airways.sited
}

met contains d.id if {
	some d in input.derived.systems
	d.id in judged
	d.shutoff_pressure.si >= limits.minimum.si
}

deficient contains [d.id, ["derived", "systems", i, "shutoff_pressure"], "minimum"] if {
	some i, d in input.derived.systems
	d.id in judged
	d.shutoff_pressure.si < limits.minimum.si
}

missing contains gap if some gap in systems.unsaid

missing contains gap if some gap in slabs.untold

missing contains [s.id, ["house", "altitude"]] if {
	some s in input.systems
	not airways.sited
}

missing contains [d.id, ["derived", "systems", i, "shutoff_pressure"]] if {
	some i, d in input.derived.systems
	not is_number(d.shutoff_pressure.si)
}
