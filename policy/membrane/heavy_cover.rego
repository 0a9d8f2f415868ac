# METADATA
# title: Heavier sheet or a cover lies where people store things or pass
# description: Feet and boxes wear thin sheet through within a year.
# custom:
#   subject: membrane
#   grade: recommended
#   stage: running
#   remedy: Lay heavier sheet, boards or mats where people pass or store things.
#   caution: Enter a crawlspace only with a second person outside, light, and air that was checked.
package policy.membrane.heavy_cover

import data.policy.membranes
import rego.v2

subjects contains gap if some gap in membranes.unlisted

subjects contains [s.id, ["systems", i, "membrane", "heavy_cover"]] if some i, s in input.systems

exempt contains outcome if some outcome in membranes.none

used contains s.id if {
	some s in input.systems
	some f in input.house.foundations
	f.id in s.foundations
	f.used_for_storage == true
}

unused contains [s.id, f.id] if {
	some s in input.systems
	some f in input.house.foundations
	f.id in s.foundations
	f.used_for_storage == false
}

exempt contains [s.id, "nobody stores things or passes there"] if {
	some s in input.systems
	count(s.foundations) > 0
	count([1 | some [id, _] in unused; id == s.id]) == count(s.foundations)
}

met contains s.id if {
	some s in input.systems
	s.id in membranes.laid
	s.id in used
	s.membrane.heavy_cover == true
}

deficient contains [s.id, ["systems", i, "membrane", "heavy_cover"]] if {
	some i, s in input.systems
	s.id in membranes.laid
	s.id in used
	s.membrane.heavy_cover == false
}

missing contains gap if some gap in membranes.unsaid

missing contains [s.id, ["systems", i, "foundations"]] if {
	some i, s in input.systems
	not is_array(s.foundations)
}

missing contains [s.id, ["house", "foundations", i, "used_for_storage"]] if {
	some s in input.systems
	some i, f in input.house.foundations
	f.id in s.foundations
	not is_boolean(f.used_for_storage)
}

missing contains [s.id, ["systems", i, "membrane", "heavy_cover"]] if {
	some i, s in input.systems
	not is_boolean(s.membrane.heavy_cover)
}
