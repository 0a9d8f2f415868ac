# METADATA
# title: Areas that inner footings part have a riser each or are piped to one
# description: A footing through the fill stops the suction like a dam, and half of the slab stays untreated.
# custom:
#   subject: foundation area
#   grade: required
#   stage: roughed-in
#   remedy: Pipe the parts together or give each its own riser before the slab is poured.
package policy.suction.footing_areas

import rego.v2

subjects contains ["house", ["house", "foundations"]] if not is_array(input.house.foundations)
subjects contains [f.id, ["house", "foundations", i, "parts_connected"]] if some i, f in input.house.foundations

exempt contains [f.id, "no inner footing parts it"] if {
	some f in input.house.foundations
	f.split_by_footings == false
}

met contains f.id if {
	some f in input.house.foundations
	f.split_by_footings == true
	f.parts_connected == true
}

deficient contains [f.id, ["house", "foundations", i, "parts_connected"]] if {
	some i, f in input.house.foundations
	f.split_by_footings == true
	f.parts_connected == false
}

missing contains [f.id, ["house", "foundations", i, "split_by_footings"]] if {
	some i, f in input.house.foundations
	not is_boolean(f.split_by_footings)
}

missing contains [f.id, ["house", "foundations", i, "parts_connected"]] if {
	some i, f in input.house.foundations
	not is_boolean(f.parts_connected)
}
