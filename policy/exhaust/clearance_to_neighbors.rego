# METADATA
# title: The outlet keeps its distance from openings of neighboring buildings
# description: The neighbor did not order a radon system and cannot see the gauge; the gas must not end up in that house.
# custom:
#   subject: outlet and opening
#   grade: hazard
#   stage: roughed-in
#   remedy: Move the outlet away from the neighboring opening; height alone does not make up for distance here.
#   caution: Work from a ladder that is set and tied, away from power lines.
#   limits:
#     minimum: {dimension: length, sense: at-least}
#     not_for: {dimension: choice, sense: not-for}
package policy.exhaust.clearance_to_neighbors

import data.policy.openings
import data.policy.systems
import rego.v2

limits := data.profile.exhaust.clearance_to_neighbors

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains gap if some gap in openings.gaps

subjects contains [c.id, ["derived", "clearances", i, "distance"]] if some i, c in input.derived.clearances

outside contains outcome if some outcome in systems.without_outlet

outside contains [s.id, "its source does not speak of systems driven this way"] if {
	some s in input.systems
	s.powered_by in limits.not_for.any_of
}

exempt contains [id, reason] if {
	some [id, reason] in outside
	some [gap, _] in openings.gaps
	gap == id
}

exempt contains [c.id, reason] if {
	some c in input.derived.clearances
	some [system, reason] in outside
	system == c.system
}

exempt contains [c.id, "the opening belongs to this house"] if {
	some c in input.derived.clearances
	c.building == "own"
}

drawing contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	is_string(s.powered_by)
	not s.powered_by in limits.not_for.any_of
}

met contains c.id if {
	some c in input.derived.clearances
	c.system in drawing
	c.building == "adjacent"
	c.distance.si >= limits.minimum.si
}

deficient contains [c.id, ["derived", "clearances", i, "distance"], "minimum"] if {
	some i, c in input.derived.clearances
	c.system in drawing
	c.building == "adjacent"
	c.distance.si < limits.minimum.si
}

missing contains [c.id, path] if {
	some c in input.derived.clearances
	some [system, path] in systems.unsaid
	system == c.system
}

missing contains [id, path] if some [id, "building", path] in openings.untold

missing contains [c.id, ["derived", "clearances", i, "distance"]] if {
	some i, c in input.derived.clearances
	not is_number(c.distance.si)
}
