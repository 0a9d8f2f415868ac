# METADATA
# title: A capped outlet is high up and clear of windows that open
# description: A cap spreads the gas sideways, so it reaches openings that a free jet would miss.
# custom:
#   subject: outlet
#   grade: recommended
#   stage: roughed-in
#   remedy: Take the cap off, or move the outlet to the height and distance called for with a cap.
#   caution: Work from a ladder that is set and tied, away from power lines.
#   limits:
#     height: {dimension: length, sense: at-least}
#     away: {dimension: length, sense: at-least}
#     drop: {dimension: length, sense: at-least}
package policy.exhaust.rain_cap_clearance

import data.policy.openings
import data.policy.systems
import rego.v2

limits := data.profile.exhaust.rain_cap_clearance

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "rain_cap"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "no cap sits on the outlet"] if {
	some s in input.systems
	s.discharge.rain_cap == false
}

capped contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.discharge.rain_cap == true
}

clear contains c.id if {
	some c in input.derived.clearances
	c.operable == false
	c.kind in openings.closable
}

clear contains c.id if {
	some c in input.derived.clearances
	c.distance.si >= limits.away.si
}

clear contains c.id if {
	some c in input.derived.clearances
	c.drop.si >= limits.drop.si
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

# Outlets with an opening that is too near or of unknown distance.
hemmed_in contains id if some [id, _] in openings.unlisted

hemmed_in contains c.system if {
	some c in input.derived.clearances
	not c.id in clear
}

met contains d.id if {
	some d in input.derived.discharges
	d.id in capped
	d.height_above_grade.si >= limits.height.si
	not d.id in hemmed_in
}

deficient contains [d.id, ["derived", "discharges", i, "height_above_grade"], "height"] if {
	some i, d in input.derived.discharges
	d.id in capped
	d.height_above_grade.si < limits.height.si
}

deficient contains [c.system, ["derived", "clearances", i, "distance"], "away"] if {
	some i, c in input.derived.clearances
	c.system in capped
	c.id in open
	c.distance.si < limits.away.si
	c.drop.si < limits.drop.si
}

missing contains gap if some gap in systems.unsaid

missing contains gap if some gap in openings.unlisted

missing contains [s.id, ["systems", i, "discharge", "rain_cap"]] if {
	some i, s in input.systems
	not is_boolean(s.discharge.rain_cap)
}

missing contains [d.id, ["derived", "discharges", i, "height_above_grade"]] if {
	some i, d in input.derived.discharges
	not is_number(d.height_above_grade.si)
}

missing contains [c.system, path] if {
	some c in input.derived.clearances
	not c.id in clear
	not c.id in open
	some [id, trait, path] in openings.untold
	id == c.id
	trait in {"kind", "operable"}
}

missing contains [c.system, ["derived", "clearances", i, "distance"]] if {
	some i, c in input.derived.clearances
	not c.id in clear
	not is_number(c.distance.si)
}

missing contains [c.system, ["derived", "clearances", i, "drop"]] if {
	some i, c in input.derived.clearances
	not c.id in clear
	not is_number(c.drop.si)
}
