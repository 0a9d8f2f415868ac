# METADATA
# title: A fan in a conditioned attic sits in a tight, reachable box that is vented outdoors
# description: A conditioned attic shares its air with the rooms; only a box that breathes outdoors keeps a leak out of them.
# custom:
#   subject: fan
#   grade: hazard
#   stage: roughed-in
#   remedy: Build a sealed box with an access door round the fan and vent it outdoors with the free area called for, or move the fan.
#   caution: Wiring and work on a running fan are for licensed people; cut the power and prove it dead first.
#   limits:
#     vent_area: {dimension: area, sense: at-least}
package policy.fan.attic_enclosure

import data.policy.systems
import rego.v2

vent_area := data.profile.fan.attic_enclosure.vent_area.si

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "enclosure"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "the fan is not in a conditioned attic"] if {
	some s in input.systems
	is_string(s.fan.place)
	s.fan.place != "conditioned-attic"
}

boxed contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.fan.place == "conditioned-attic"
}

met contains s.id if {
	some s in input.systems
	s.id in boxed
	s.fan.enclosure.sealed == true
	s.fan.enclosure.accessible == true
	s.fan.enclosure.net_free_vent_area.si >= vent_area
}

deficient contains [s.id, ["systems", i, "fan", "enclosure", "sealed"]] if {
	some i, s in input.systems
	s.id in boxed
	s.fan.enclosure.sealed == false
}

deficient contains [s.id, ["systems", i, "fan", "enclosure", "accessible"]] if {
	some i, s in input.systems
	s.id in boxed
	s.fan.enclosure.accessible == false
}

deficient contains [s.id, ["systems", i, "fan", "enclosure", "net_free_vent_area"], "vent_area"] if {
	some i, s in input.systems
	s.id in boxed
	s.fan.enclosure.net_free_vent_area.si < vent_area
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "fan", "place"]] if {
	some i, s in input.systems
	not is_string(s.fan.place)
}

missing contains [s.id, ["systems", i, "fan", "enclosure", "sealed"]] if {
	some i, s in input.systems
	not is_boolean(s.fan.enclosure.sealed)
}

missing contains [s.id, ["systems", i, "fan", "enclosure", "accessible"]] if {
	some i, s in input.systems
	not is_boolean(s.fan.enclosure.accessible)
}

missing contains [s.id, ["systems", i, "fan", "enclosure", "net_free_vent_area"]] if {
	some i, s in input.systems
	not is_number(s.fan.enclosure.net_free_vent_area.si)
}
