# METADATA
# title: The floor above a depressurized crawlspace is tight
# description: Through gaps in the floor the fan pulls air out of the house, and with it the flue gas of furnace and water heater.
# custom:
#   subject: system
#   grade: hazard
#   stage: running
#   remedy: Seal ducts, pipes, wires and hatches in the floor, then test fuel-burning appliances with the fan on.
#   caution: Suction on walls or crawlspace can pull flue gas back into the house; test fuel-burning appliances with the system on.
package policy.sealing.floor_over_crawlspace

import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "foundations"]] if some i, s in input.systems

exempt contains [s.id, "this kind of system does not draw on the air of a crawlspace"] if {
	some s in input.systems
	is_string(s.kind)
	s.kind != "crawlspace-depressurization"
}

tight contains [s.id, f.id] if {
	some s in input.systems
	some f in input.house.foundations
	f.id in s.foundations
	f.floor_above_sealed == true
}

met contains s.id if {
	some s in input.systems
	s.kind == "crawlspace-depressurization"
	count(s.foundations) > 0
	count([1 | some [id, _] in tight; id == s.id]) == count(s.foundations)
}

deficient contains [s.id, ["house", "foundations", i, "floor_above_sealed"]] if {
	some s in input.systems
	s.kind == "crawlspace-depressurization"
	some i, f in input.house.foundations
	f.id in s.foundations
	f.floor_above_sealed == false
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "foundations"]] if {
	some i, s in input.systems
	not is_array(s.foundations)
}

missing contains [s.id, ["house", "foundations", i, "floor_above_sealed"]] if {
	some s in input.systems
	some i, f in input.house.foundations
	f.id in s.foundations
	not is_boolean(f.floor_above_sealed)
}
