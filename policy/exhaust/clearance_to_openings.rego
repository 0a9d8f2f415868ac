# METADATA
# title: The outlet keeps its distance from openings of this house
# description: Soil gas that blows back through a window, door or intake undoes the work in the room behind it.
# custom:
#   subject: outlet and opening
#   grade: hazard
#   stage: roughed-in
#   remedy: Move or raise the outlet until it is far enough from the opening, or high enough above its top.
#   caution: Work from a ladder that is set and tied, away from power lines.
#   limits:
#     minimum: {dimension: length, sense: at-least}
#     waiver_drop: {dimension: length, sense: at-least}
#     skipped_panes: {dimension: choice, sense: not-for}
#     skipped_kinds: {dimension: choice, sense: not-for}
#     not_for: {dimension: choice, sense: not-for}
package policy.exhaust.clearance_to_openings

import data.policy.openings
import data.policy.systems
import rego.v2

limits := data.profile.exhaust.clearance_to_openings

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

exempt contains [c.id, "the opening belongs to a neighboring building"] if {
	some c in input.derived.clearances
	c.building == "adjacent"
}

exempt contains [c.id, "it does not open into heated or cooled rooms"] if {
	some c in input.derived.clearances
	c.into_conditioned_space == false
}

exempt contains [c.id, "it does not open"] if {
	some c in input.derived.clearances
	"fixed" in limits.skipped_panes.any_of
	c.operable == false
	c.kind in openings.closable
}

exempt contains [c.id, "openings of this kind do not count"] if {
	some c in input.derived.clearances
	c.kind in limits.skipped_kinds.any_of
}

drawing contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	is_string(s.powered_by)
	not s.powered_by in limits.not_for.any_of
}

pane contains c.id if {
	some c in input.derived.clearances
	not "fixed" in limits.skipped_panes.any_of
}

pane contains c.id if {
	some c in input.derived.clearances
	c.operable == true
}

pane contains c.id if {
	some c in input.derived.clearances
	is_string(c.kind)
	not c.kind in openings.closable
}

kind contains c.id if {
	some c in input.derived.clearances
	count(limits.skipped_kinds.any_of) == 0
}

kind contains c.id if {
	some c in input.derived.clearances
	is_string(c.kind)
}

judged contains c.id if {
	some c in input.derived.clearances
	c.system in drawing
	c.building == "own"
	c.into_conditioned_space == true
	c.id in pane
	c.id in kind
}

met contains c.id if {
	some c in input.derived.clearances
	c.id in judged
	c.distance.si >= limits.minimum.si
}

met contains c.id if {
	some c in input.derived.clearances
	c.id in judged
	c.drop.si >= limits.waiver_drop.si
}

deficient contains [c.id, ["derived", "clearances", i, "distance"], "minimum"] if {
	some i, c in input.derived.clearances
	c.id in judged
	c.distance.si < limits.minimum.si
	c.drop.si < limits.waiver_drop.si
}

missing contains [c.id, path] if {
	some c in input.derived.clearances
	some [system, path] in systems.unsaid
	system == c.system
}

missing contains [id, path] if some [id, "building", path] in openings.untold

missing contains [id, path] if some [id, "conditioned", path] in openings.untold

missing contains [id, path] if {
	some [id, "operable", path] in openings.untold
	not id in pane
}

missing contains [id, path] if {
	some [id, "kind", path] in openings.untold
	not id in kind
}

missing contains [c.id, ["derived", "clearances", i, "distance"]] if {
	some i, c in input.derived.clearances
	not is_number(c.distance.si)
}

missing contains [c.id, ["derived", "clearances", i, "drop"]] if {
	some i, c in input.derived.clearances
	not is_number(c.drop.si)
}
