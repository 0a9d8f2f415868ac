# METADATA
# title: The end of a passive vent is above or well to the side of intakes, doors and windows that open
# description: A passive vent lets gas drift instead of throwing it, so what opens close by takes it in.
# custom:
#   subject: outlet and opening
#   grade: required
#   stage: roughed-in
#   remedy: Raise the end of the vent above the opening, or move it to the side.
#   caution: Roof work needs fall protection.
#   limits:
#     above: {dimension: length, sense: at-least}
#     away: {dimension: length, sense: at-least}
#     kinds: {dimension: choice, sense: applies-to}
#     not_for: {dimension: choice, sense: not-for}
#     regions: {dimension: choice, sense: applies-to}
package policy.exhaust.passive_terminal

import data.policy.openings
import data.policy.systems
import rego.v2

limits := data.profile.exhaust.passive_terminal

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains gap if some gap in openings.gaps

subjects contains [c.id, ["derived", "clearances", i, "distance"]] if some i, c in input.derived.clearances

exempt contains [id, "its source is the code of another region"] if {
	some [id, _] in subjects
	is_string(input.job.jurisdiction.state)
	not input.job.jurisdiction.state in limits.regions.any_of
}

exempt contains [id, "the house is not new"] if {
	some [id, _] in subjects
	input.house.new_construction == false
}

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

exempt contains [c.id, "it does not open"] if {
	some c in input.derived.clearances
	c.operable == false
	c.kind in openings.closable
}

exempt contains [c.id, "openings of this kind do not count"] if {
	some c in input.derived.clearances
	is_string(c.kind)
	not c.kind in limits.kinds.any_of
}

open contains c.id if {
	some c in input.derived.clearances
	c.operable == true
}

open contains c.id if {
	some c in input.derived.clearances
	is_string(c.kind)
	not c.kind in openings.closable
}

judged contains c.id if {
	input.job.jurisdiction.state in limits.regions.any_of
	input.house.new_construction == true
	some c in input.derived.clearances
	c.id in open
	c.kind in limits.kinds.any_of
	some s in input.systems
	s.id == c.system
	s.kind in systems.soil_kinds
	is_string(s.powered_by)
	not s.powered_by in limits.not_for.any_of
}

met contains c.id if {
	some c in input.derived.clearances
	c.id in judged
	c.drop.si >= limits.above.si
}

met contains c.id if {
	some c in input.derived.clearances
	c.id in judged
	c.distance.si >= limits.away.si
}

deficient contains [c.id, ["derived", "clearances", i, "distance"], "away"] if {
	some i, c in input.derived.clearances
	c.id in judged
	c.distance.si < limits.away.si
	c.drop.si < limits.above.si
}

missing contains [id, ["job", "jurisdiction", "state"]] if {
	some [id, _] in subjects
	not is_string(input.job.jurisdiction.state)
}

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	not is_boolean(input.house.new_construction)
}

missing contains gap if some gap in openings.gaps

missing contains [c.id, path] if {
	some c in input.derived.clearances
	some [system, path] in systems.unsaid
	system == c.system
}

missing contains [id, path] if some [id, "kind", path] in openings.untold

missing contains [id, path] if {
	some [id, "operable", path] in openings.untold
	not id in open
}

missing contains [c.id, ["derived", "clearances", i, "distance"]] if {
	some i, c in input.derived.clearances
	not is_number(c.distance.si)
}

missing contains [c.id, ["derived", "clearances", i, "drop"]] if {
	some i, c in input.derived.clearances
	not is_number(c.drop.si)
}
